package counterset.referee;

import counterset.model.Intervals;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.score.JointAgain;
import counterset.score.LightBeforeHeavy;
import counterset.score.PairFit;
import counterset.score.PatternAgain;
import counterset.score.SameMuscleInARow;
import counterset.score.TurnOver;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Walks through all rounds of a filled superset and adds up what it is worth by itself. */
final class FillingCost {

  private static final int GRACE = 5;
  private static final int COUNTDOWN = 5;

  private final Problem problem;
  private final PairCosts partners;
  private final boolean narrow;
  private final boolean floorLast;
  private final Weights weights;
  private final Handover handover;
  private final int roomInside;
  private final int roomInRest;

  FillingCost(Request request, Weights weights, Handover handover) {
    this.problem = request.problem();
    this.partners = new PairCosts(request);
    this.narrow = request.isNarrow();
    this.floorLast = !request.isForUpperBody();
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
        int room = i == 0 ? roomInRest : Handover.NO_REST;
        cost += handover.cost(inUse, next.needs(), next.keeps(), seconds, room);
        trips += !last.onFloor() && next.onFloor() ? 1 : 0;
        cost += turning(last.exercise().position(), next.exercise().position());
        inUse = inUse & next.keeps() | next.needs();
        last = next;
      }
    }
    boolean pairs = filled.size() == places.size() && places.size() > 1;
    int fit = pairs ? partners.of(places) * weights.of(PairFit.class) : 0;
    int points = -fit - order(places.stream().filter(Objects::nonNull).distinct().toList()) - cost;
    return Optional.of(
        new Filling(
            places, Entry.of(filled.get(0), entering), Exit.of(last, inUse), points, trips));
  }

  /** What it costs to turn over on the floor: from the back, a side or the front to another. */
  int turning(Position before, Position after) {
    boolean turns = before.isFloor() && after.isFloor() && lies(before) != lies(after);
    return turns ? weights.of(TurnOver.class) : 0;
  }

  private static int lies(Position position) {
    return switch (position) {
      case SUPINE, FLOOR_SEATED -> 1;
      case SIDE_LYING -> 2;
      default -> 3;
    };
  }

  /** What two exercises cost that are done before and after a rest. */
  int neighbours(Neighbour before, Neighbour after) {
    int muscle = before.sharesMuscle(after) ? narrow ? 1 : 6 : 0;
    return muscle * weights.of(SameMuscleInARow.class)
        + before.sharedJoints(after) * weights.of(JointAgain.class)
        + (before.sharesPattern(after) ? weights.of(PatternAgain.class) : 0);
  }

  private int order(List<Choice> filled) {
    int steps = 0;
    for (int later = 1; later < filled.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        Choice first = filled.get(earlier);
        Choice then = filled.get(later);
        boolean down = floorLast && !first.onFloor() && then.onFloor();
        steps += down ? 0 : Math.max(0, then.merit().tier() - first.merit().tier());
      }
    }
    return steps * weights.of(LightBeforeHeavy.class);
  }
}
