package counterset.bound;

import counterset.model.Pairing;
import counterset.model.SupersetKind;
import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.ExerciseRepeated;
import counterset.score.Level;
import counterset.score.PairFit;
import counterset.score.SessionFacts;
import counterset.score.SidesSplit;
import counterset.score.Step;
import counterset.score.StepConstraint;
import java.util.List;

/** What it is worth that one node follows another, floor trips apart; at most what it really is. */
final class Arcs {

  /** What can never happen. Two of these and all prices of a session still fit an {@code int}. */
  static final int NEVER = -(1 << 29);

  /** A move from a place to the next of the superset, between classes of the links so far. */
  record Stage(int from, int to, int[][] points) {}

  private final SessionFacts facts;
  private final Nodes.Graph graph;
  private final Weights weights;
  private final int perSuperset;
  private final int rounds;
  private final List<StepConstraint> steps = Constraints.of(StepConstraint.class);
  private final boolean holes;
  private final Step step;

  Arcs(SessionFacts facts, Nodes.Graph graph, Weights weights, boolean holes) {
    this.holes = holes;
    this.facts = facts;
    this.graph = graph;
    this.weights = weights;
    this.perSuperset = facts.perSuperset();
    this.rounds = facts.clock().rounds();
    this.step = new Step(facts);
  }

  /** Across a rest, by node and node. */
  int[][] rest(int scale) {
    return matrix(
        scale, true, (from, to) -> from.candidate() == null ? 0 : step(from, to, false, true));
  }

  /** The moves from one place of a superset to the next, by the place they start from. */
  Stage[][] stages(int scale) {
    if (perSuperset == 1) {
      return new Stage[0][];
    }
    Stage[][] stages = new Stage[perSuperset - 1][];
    for (int place = 0; place < stages.length; place++) {
      int[][] points = matrix(scale, false, (from, to) -> plus(inside(from, to), points(from, to)));
      stages[place] = new Stage[] {new Stage(0, 0, points)};
    }
    return stages;
  }

  /** What doing both sides of one exercise is worth. */
  int bothSides() {
    Pairing pairing = facts.problem().pairing();
    return -weights.of(PairFit.class) * PairFit.bothSides(pairing);
  }

  /** How often one goes down or up inside a superset if its neighbours differ in that. */
  int tripsInside() {
    return perSuperset == 2 ? 2 * rounds - 1 : rounds;
  }

  /** In a longer superset a hole, or a weaker pair beside it, can set a pair free. */
  private int points(Node from, Node to) {
    boolean alone = perSuperset == 2;
    if (!alone && (holes || !weights.matters(SidesSplit.class))) {
      return 0;
    }
    boolean compound = facts.problem().pairing() == Pairing.COMPOUND;
    SupersetKind kind = facts.kind(from.candidate(), to.candidate());
    if (!alone && compound && kind.compareTo(SupersetKind.COMPOUND) < 0) {
      return 0;
    }
    return -weights.of(PairFit.class) * PairFit.between(facts, from.candidate(), to.candidate());
  }

  /** In all rounds; with more than two places, what happens between the rounds is left out. */
  private int inside(Node from, Node to) {
    Candidate first = from.candidate();
    Candidate second = to.candidate();
    if (perSuperset == 2 && first == second && first.unilateral()) {
      return NEVER;
    }
    if (perSuperset == 2
        && weights.matters(SidesSplit.class)
        && (first.unilateral() || second.unilateral())) {
      return NEVER;
    }
    int points = step(from, to, true, true);
    if (rounds > 1) {
      Node again =
          perSuperset == 2
              ? to.then(first)
              : new Node(first, first.handling().needs(), first.handling().keeps());
      int later = step(again, to, true, false);
      if (perSuperset == 2) {
        later = plus(later, step(to, again, false, false));
      }
      points = later == NEVER ? NEVER : plus(points, (rounds - 1) * later);
    }
    return points;
  }

  /**
   * What the step constraints say of a step, at most.
   *
   * @param inside whether both are of one superset and round
   * @param firstRound whether what comes is done for the first time
   */
  private int step(Node from, Node to, boolean inside, boolean firstRound) {
    Candidate before = from.candidate();
    Candidate after = to.candidate();
    if (firstRound && before.root() == after.root() && weights.matters(ExerciseRepeated.class)) {
      return NEVER;
    }
    step.look(before, after, from.kindest(after), inside, firstRound);
    int points = 0;
    for (StepConstraint constraint : steps) {
      int units = constraint.measure(step);
      if (units > 0 && constraint.level() == Level.HARD && weights.matters(constraint)) {
        return NEVER;
      }
      points -= constraint.level() == Level.SOFT ? weights.of(constraint) * units : 0;
    }
    return points;
  }

  private static int plus(int a, int b) {
    return a == NEVER || b == NEVER ? NEVER : a + b;
  }

  private interface Worth {
    int of(Node from, Node to);
  }

  private int[][] matrix(int scale, boolean atStart, Worth worth) {
    int n = graph.nodes().size();
    int[][] points = new int[n][n];
    for (int from = 0; from < n; from++) {
      Node node = graph.nodes().get(from);
      for (int to = 0; to < n; to++) {
        Node next = graph.nodes().get(to);
        boolean possible = to > 0 && (from > 0 || atStart) && graph.follows(node, next);
        int value = possible ? worth.of(node, next) : NEVER;
        points[from][to] = value == NEVER ? NEVER : value * scale;
      }
    }
    return points;
  }
}
