package counterset.score;

import counterset.model.MovementPattern;
import counterset.model.MovementPattern.Group;
import java.util.Optional;
import java.util.Set;

/**
 * What it costs to pair two exercises, in points from 0 to 16: by their movement patterns, and by
 * the muscle groups that both train first. Common practice, no source.
 */
final class PairTable {

  private static final int WORST = 16;
  private static final int SAME = 14;
  private static final int BIG_LEGS = 12;
  private static final int LEGS = 8;
  private static final int ARMS = 7;
  private static final int POWER_WITH_SMALL = 14;
  private static final int SHARED_MUSCLE = 5;
  private static final int SHARED_BACK = 5;
  private static final int SHARED_MUSCLE_WHERE_FEW = 2;

  private final int[][] costs;
  private final int sharedMuscle;

  private PairTable(SessionFacts facts) {
    Patterns patterns = facts.patterns();
    sharedMuscle = facts.isNarrow() ? SHARED_MUSCLE_WHERE_FEW : SHARED_MUSCLE;
    costs = new int[patterns.count()][patterns.count()];
    for (int one = 0; one < costs.length; one++) {
      for (int other = 0; other < costs.length; other++) {
        costs[one][other] = one == other ? SAME : of(facts, one, other);
      }
    }
  }

  static PairTable of(SessionFacts facts) {
    return facts.workedOut(PairTable.class, PairTable::new);
  }

  int cost(Candidate one, Candidate other) {
    int shared = Long.bitCount(one.primary() & other.primary());
    int cost = costs[one.merit().pattern()][other.merit().pattern()] + shared * sharedMuscle;
    boolean backs = (one.merit().fatigue() & other.merit().fatigue() & Fatigue.BACK.bit()) != 0;
    cost += backs ? SHARED_BACK : 0;
    return Math.min(WORST, cost);
  }

  private static int of(SessionFacts facts, int one, int other) {
    Optional<MovementPattern> first = facts.patterns().kind(one);
    Optional<MovementPattern> second = facts.patterns().kind(other);
    if (first.isEmpty() || second.isEmpty()) {
      return facts.patterns().isEmpty() ? 0 : 6;
    }
    boolean opposed =
        first.get().pairs().contains(second.get().id())
            || second.get().pairs().contains(first.get().id());
    boolean bigLegs =
        first.get().big() && second.get().big() && isLegs(first.get()) && isLegs(second.get());
    if (isPowerWithSmall(first.get(), second.get())) {
      return POWER_WITH_SMALL;
    }
    if (facts.patterns().isWhole() && isLegs(first.get()) && isLegs(second.get())) {
      return bigLegs ? BIG_LEGS : LEGS;
    }
    if (facts.patterns().isWhole() && isSmallUpper(first.get()) && isSmallUpper(second.get())) {
      return ARMS;
    }
    return opposed ? 0 : of(first.get().group(), second.get().group(), facts.patterns().isWhole());
  }

  /** Power is too good to be a calf raise's or a curl's rest. */
  private static boolean isPowerWithSmall(MovementPattern one, MovementPattern other) {
    return one.group() == Group.POWER && isSmall(other)
        || other.group() == Group.POWER && isSmall(one);
  }

  private static boolean isSmall(MovementPattern pattern) {
    return pattern.group() == Group.SMALL_LEG || isSmallUpper(pattern);
  }

  /** Arms and single shoulder muscles rest best beside leg work. */
  private static boolean isSmallUpper(MovementPattern pattern) {
    return !pattern.big() && (pattern.group() == Group.PUSH || pattern.group() == Group.PULL);
  }

  private static boolean isLegs(MovementPattern pattern) {
    return pattern.group().isLegs();
  }

  private static int of(Group one, Group other, boolean whole) {
    Set<Group> both = Set.of(Group.KNEE, Group.HIP);
    if (one.isLegs() != other.isLegs()) {
      boolean trunk = one == Group.TRUNK || other == Group.TRUNK;
      return whole && !trunk ? 1 : 4;
    }
    if (one == other) {
      return one == Group.SMALL_LEG || one == Group.TRUNK ? 5 : 13;
    }
    if (one == Group.POWER || other == Group.POWER) {
      return one == Group.KNEE || other == Group.KNEE ? 4 : 9;
    }
    if (both.contains(one) && both.contains(other)) {
      return 3;
    }
    if (one == Group.CONDITIONING || other == Group.CONDITIONING) {
      return 6;
    }
    if (one == Group.SMALL_LEG || other == Group.SMALL_LEG) {
      return 5;
    }
    return one == Group.TRUNK || other == Group.TRUNK ? 4 : 3;
  }
}
