package counterset.bound;

import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.Level;
import counterset.score.LightBeforeHeavy;
import counterset.score.PlaceConstraint;
import counterset.score.SessionFacts;
import java.util.Arrays;
import java.util.List;

/** The relaxed problem: a limit for any multipliers, and how it changes with them. */
final class Relaxation {

  private static final int ORDER = 200_000;
  private final Network network;
  private Paths paths;
  private Diagram diagram;

  /** Whether a diagram was tried and had too many arcs; trying again has never been worth it. */
  private boolean tooLarge;

  private final List<Term> terms;
  private final int[] first;
  private final int[] ownOnce;
  private final int[] ownPlace;
  private final Prices prices;
  private final int[] y;
  private final int scale;
  private final Memory memory;
  private final Refinement refinement;

  Relaxation(
      SessionFacts facts, Network network, List<Term> terms, Memory memory, Weights weights) {
    this.memory = memory;
    this.network = network;
    this.paths = new Paths(network, new int[network.nodes.size()], 0);
    this.terms = terms;
    this.scale = network.scale;
    first = new int[terms.size() + 1];
    for (int i = 0; i < terms.size(); i++) {
      first[i + 1] = first[i] + terms.get(i).size();
    }
    y = new int[first[terms.size()]];
    List<Candidate> all = facts.candidates();
    prices = new Prices(all.size());
    int order = scale * weights.of(LightBeforeHeavy.class);
    int[] intensity = all.stream().mapToInt(Network::heaviness).toArray();
    int[] charged = all.stream().mapToInt(Network::chargedHeaviness).toArray();
    refinement = new Refinement(memory, intensity, charged, order);
    ownOnce = all.stream().mapToInt(c -> scale * own(c, weights, false)).toArray();
    ownPlace = all.stream().mapToInt(c -> scale * own(c, weights, true)).toArray();
  }

  /** What the place constraints say of an exercise: once a place, or once a superset. */
  private static int own(Candidate candidate, Weights weights, boolean perPosition) {
    int points = 0;
    for (PlaceConstraint constraint : Constraints.of(PlaceConstraint.class)) {
      if (constraint.level() == Level.SOFT && constraint.isPerPosition() == perPosition) {
        int units = constraint.measure(candidate) * weights.of(constraint);
        points += constraint.isReward() ? units : -units;
      }
    }
    return points;
  }

  /**
   * Leaves out what no session of so many points uses, and makes paths remember more.
   *
   * @param multipliers unscaled and projected
   * @param least scaled points of a session that matters
   */
  void refine(double[] multipliers, long least) {
    price(multipliers);
    long copies = copies(new double[y.length]);
    if (diagram == null && !tooLarge) {
      paths.longest(prices);
      diagram = Refinement.first(network, paths, prices, least - copies);
      tooLarge = diagram == null;
    }
    if (diagram == null) {
      paths = memory.grow(paths, network);
    } else {
      diagram = refinement.of(diagram, prices, least - copies);
    }
  }

  /** How many multipliers there are. */
  int size() {
    return y.length;
  }

  /** Puts multipliers where they are valid. */
  void project(double[] multipliers) {
    for (int i = 0; i < terms.size(); i++) {
      terms.get(i).project(multipliers, first[i]);
    }
  }

  /**
   * The limit that some multipliers prove.
   *
   * @param multipliers unscaled and projected
   * @param slope filled with how the limit grows with each of them
   * @return scaled points; below {@code Arrays.NEVER / 2} if no session keeps the rules
   */
  long limit(double[] multipliers, double[] slope) {
    price(multipliers);
    long copies = copies(slope);
    Longest longest = diagram == null ? paths : diagram;
    int path = longest.longest(prices);
    if (path <= Arcs.NEVER / 2) {
      return Arcs.NEVER;
    }
    Tour tour = longest.tour(prices);
    memory.see(tour);
    for (int i = 0; i < terms.size(); i++) {
      terms.get(i).slope(tour, first[i], slope);
    }
    return path + copies;
  }

  private void price(double[] multipliers) {
    for (int i = 0; i < y.length; i++) {
      y[i] = (int) (multipliers[i] * scale);
    }
    prices.clear();
    System.arraycopy(ownOnce, 0, prices.once, 0, ownOnce.length);
    System.arraycopy(ownPlace, 0, prices.place, 0, ownPlace.length);
    for (int i = 0; i < terms.size(); i++) {
      terms.get(i).price(y, first[i], prices);
    }
  }

  private long copies(double[] slope) {
    Arrays.fill(slope, 0);
    long copies = 0;
    for (int i = 0; i < terms.size(); i++) {
      copies += terms.get(i).copy(y, first[i], slope);
    }
    return copies;
  }
}
