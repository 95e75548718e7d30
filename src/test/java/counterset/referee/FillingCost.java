package counterset.referee;

import counterset.model.Intervals;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.SupersetKind;
import counterset.score.JointAgain;
import counterset.score.LightBeforeHeavy;
import counterset.score.OpposingPair;
import counterset.score.SameMuscleInARow;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Walks through all rounds of a filled superset and adds up what it is worth by itself. */
final class FillingCost {

  private static final int GRACE = 5;
  private static final int COUNTDOWN = 5;

  private final Problem problem;
  private final Weights weights;
  private final Handover handover;
  private final int roomInside;
  private final int roomInRest;

  FillingCost(Problem problem, Weights weights, Handover handover) {
    this.problem = problem;
    this.weights = weights;
    this.handover = handover;
    Intervals clock = problem.clock();
    this.roomInside = clock.between() + GRACE;
    this.roomInRest = roomInRest(clock);
  }

  static int roomInRest(Intervals clock) {
    return Math.max(0, clock.rest() - COUNTDOWN);
  }

  /**
   * The filling, unless a change-over in it takes longer than its room.
   *
   * @param places at least one of them filled
   * @param entering the items in use once the first exercise has begun
   */
  Optional<Filling> of(List<Choice> places, long entering) {
    List<Choice> filled = places.stream().filter(Objects::nonNull).toList();
    Choice last = filled.get(0);
    long inUse = entering;
    int cost = 0;
    int trips = 0;
    for (int round = 0; round < problem.clock().rounds(); round++) {
      for (int i = round == 0 ? 1 : 0; i < filled.size(); i++) {
        Choice next = filled.get(i);
        int seconds =
            handover.seconds(
                inUse,
                last.exercise().position(),
                next.needs(),
                next.keeps(),
                next.exercise().position());
        if (seconds > (i == 0 ? roomInRest : roomInside)) {
          return Optional.empty();
        }
        cost += handover.cost(inUse, next.needs(), next.keeps(), seconds);
        trips += last.onFloor() != next.onFloor() ? 1 : 0;
        inUse = inUse & next.keeps() | next.needs();
        last = next;
      }
    }
    boolean full = filled.size() == places.size();
    int points = (full ? reward(filled) : 0) - neighbours(filled) - order(filled) - cost;
    return Optional.of(
        new Filling(
            places, Entry.of(filled.get(0), entering), Exit.of(last, inUse), points, trips));
  }

  private int reward(List<Choice> filled) {
    if (filled.size() < 2 || problem.pairing() == Pairing.FREE) {
      return 0;
    }
    SupersetKind kind = link(filled, 1);
    for (int i = 2; i < filled.size(); i++) {
      SupersetKind next = link(filled, i);
      kind = next.compareTo(kind) > 0 ? next : kind;
    }
    boolean opposing = problem.pairing() == Pairing.OPPOSING;
    int points = 0;
    if (kind == SupersetKind.UNILATERAL) {
      points = 10;
    } else if (opposing && kind == SupersetKind.AGONIST_ANTAGONIST
        || !opposing && kind == SupersetKind.COMPOUND) {
      points = 20;
    } else if (opposing && kind == SupersetKind.OPPOSITE_REGION) {
      points = 12;
    }
    return points * weights.of(OpposingPair.class);
  }

  private static SupersetKind link(List<Choice> filled, int i) {
    return filled.get(i - 1).profile().kindWith(filled.get(i).profile());
  }

  private int neighbours(List<Choice> filled) {
    int cost = 0;
    for (int i = 1; i < filled.size(); i++) {
      Choice a = filled.get(i - 1);
      Choice b = filled.get(i);
      if (!a.equals(b)) {
        cost += neighbours(a.muscles() & b.muscles(), a.joints() & b.joints(), 15);
      }
    }
    return cost;
  }

  /** What neighbours cost that share these muscle groups and joints. */
  int neighbours(long muscles, long joints, int sameMuscle) {
    int cost = Long.bitCount(joints) * weights.of(JointAgain.class);
    if (muscles != 0 && problem.pairing() != Pairing.COMPOUND) {
      cost += sameMuscle * weights.of(SameMuscleInARow.class);
    }
    return cost;
  }

  private int order(List<Choice> filled) {
    int steps = 0;
    for (int later = 1; later < filled.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        steps +=
            Math.max(
                0,
                filled.get(later).exercise().intensity()
                    - filled.get(earlier).exercise().intensity());
      }
    }
    return steps * weights.of(LightBeforeHeavy.class);
  }
}
