package counterset.bound;

import counterset.model.Keep;
import counterset.score.Candidate;
import counterset.score.KeptMoved;
import counterset.score.LightBeforeHeavy;
import counterset.score.SessionFacts;
import counterset.score.SidesSplit;
import java.util.Arrays;
import java.util.List;

/** The places of a session and what can follow what, as arrays for {@link Paths}. */
final class Network {

  final int supersets;
  final int perSuperset;
  final int scale;
  final List<Node> nodes;

  /** By node; of the start, nothing but zeros. */
  final int[] candidate;

  final int[] intensity;
  final int[] charged;
  final boolean[] floor;
  final boolean[] unilateral;

  /** Whether an exercise may be the other side of one that does not stand right before it. */
  final boolean[] mayBeSecondSide;

  final int classes;
  final int[][] rest;
  final Arcs.Stage[][] stages;
  final int bothSides;
  final int tripsInside;

  /** Scaled points that each step costs by which a later exercise is heavier. */
  final int order;

  /** Whether supersets may have holes. */
  final boolean holes;

  private final boolean sidesMatter;
  private final boolean[] anywhere;
  private final boolean[][] pinned;

  /**
   * Lays out a problem.
   *
   * @param usable the candidates that may stand in a place
   * @param scale how much one point is
   */
  Network(SessionFacts facts, List<Candidate> usable, Weights weights, int scale, boolean holes) {
    supersets = facts.supersets();
    perSuperset = facts.perSuperset();
    this.scale = scale;
    this.holes = holes;
    Nodes.Graph graph = Nodes.of(usable);
    nodes = graph.nodes();
    int size = nodes.size();
    candidate = new int[size];
    intensity = new int[size];
    charged = new int[size];
    floor = new boolean[size];
    unilateral = new boolean[size];
    mayBeSecondSide = new boolean[size];
    sidesMatter = weights.matters(SidesSplit.class);
    for (int node = 1; node < size; node++) {
      Candidate of = nodes.get(node).candidate();
      candidate[node] = of.index();
      intensity[node] = heaviness(of);
      charged[node] = chargedHeaviness(of);
      floor[node] = of.floor();
      unilateral[node] = of.unilateral();
      mayBeSecondSide[node] = of.unilateral() && perSuperset > 2 && !sidesMatter;
    }
    Arcs arcs = new Arcs(facts, graph, weights, holes);
    classes = 1;
    rest = arcs.rest(scale);
    stages = arcs.stages(scale);
    bothSides = arcs.bothSides() * scale;
    tripsInside = arcs.tripsInside();
    order = weights.of(LightBeforeHeavy.class) * scale;
    anywhere = new boolean[size];
    Arrays.fill(anywhere, true);
    pinned = new boolean[supersets * perSuperset][];
    if (weights.matters(KeptMoved.class)) {
      facts.problem().keep().forEach(this::pin);
    }
  }

  private void pin(Keep keep) {
    int place = (keep.at().superset() - 1) * perSuperset + keep.at().position();
    if (keep.at().position() < perSuperset && place < pinned.length) {
      pinned[place] = new boolean[nodes.size()];
      for (int node = 1; node < nodes.size(); node++) {
        Candidate of = nodes.get(node).candidate();
        pinned[place][node] = of.exercise().id().equals(keep.exercise());
      }
    }
  }

  /** By node, whether it may stand in a place. */
  boolean[] allowed(int superset, int place) {
    boolean[] only = pinned[superset * perSuperset + place];
    return only == null ? anywhere : only;
  }

  /** Whether a node may be all there is in a superset with a hole. */
  boolean mayStandAlone(int node) {
    return !(unilateral[node] && sidesMatter);
  }

  /**
   * The step of the order of work that an exercise has, 1 to 3: some steps are taken together, so
   * that no two are further apart than they are.
   */
  static int heaviness(Candidate exercise) {
    return 1 + Math.max(0, Math.min(2, exercise.merit().tier() - 1));
  }

  /** The same of what comes later; work on the floor is heavier than nothing that stands before. */
  static int chargedHeaviness(Candidate exercise) {
    return exercise.merit().floorLast() ? 1 : heaviness(exercise);
  }
}
