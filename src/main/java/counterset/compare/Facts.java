package counterset.compare;

import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.TargetCoverage;
import counterset.model.Totals;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The figures of a plan that a choice between plans goes by.
 *
 * @param brokenRules places where a rule is broken
 * @param unmetWishes places where one of the wishes that matter most is not met
 * @param hard points of the broken rules, at most 0
 * @param medium points of the unmet wishes, at most 0
 * @param points for everything else
 * @param supersets filled ones
 * @param minutes the cap
 * @param seconds from the first to the last
 * @param fetched different items to fetch before the session
 * @param handled items taken up or put away between exercises
 * @param changeover seconds of all changeovers
 * @param loaded positions that use equipment of the client
 * @param positions filled ones
 * @param floorTrips times that one goes down to the floor or gets up
 * @param covered targets with all the direct sets that were asked for
 */
public record Facts(
    int brokenRules,
    int unmetWishes,
    int hard,
    int medium,
    int points,
    int supersets,
    int minutes,
    int seconds,
    int fetched,
    int handled,
    int changeover,
    int loaded,
    int positions,
    int floorTrips,
    int covered,
    int targets) {

  /** Those of a plan. */
  public static Facts of(Plan plan) {
    Totals totals = plan.totals();
    return new Facts(
        matches(plan, "hard"),
        matches(plan, "medium"),
        plan.score().hard(),
        plan.score().medium(),
        plan.score().soft(),
        totals.supersets(),
        plan.problem().minutes(),
        totals.seconds(),
        (int) plan.fetch().stream().filter(it -> !it.item().equipment().alwaysThere()).count(),
        totals.itemsHandled(),
        totals.changeoverSeconds(),
        totals.loadedPositions(),
        totals.positions(),
        totals.floorTrips(),
        (int) plan.coverage().stream().filter(TargetCoverage::isCovered).count(),
        plan.coverage().size());
  }

  private static int matches(Plan plan, String level) {
    List<PlanScore.Line> lines = plan.score().lines();
    Set<String> ids =
        lines.stream()
            .filter(line -> line.level().equals(level))
            .map(PlanScore.Line::id)
            .collect(Collectors.toSet());
    return (int) plan.matches().stream().map(Match::constraint).filter(ids::contains).count();
  }

  /** Whether the plan can be led: no rule is broken, and there is work in it. */
  public boolean feasible() {
    return hard >= 0 && supersets > 0;
  }

  /** Points divided by supersets; 0 without any. */
  public double pointsPerSuperset() {
    return supersets == 0 ? 0 : (double) points / supersets;
  }

  /** The share of the positions that use equipment of the client, 0 to 1. */
  public double loadedShare() {
    return positions == 0 ? 0 : (double) loaded / positions;
  }
}
