package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekSets;
import java.util.List;

/**
 * The sets of one target in a week.
 *
 * @param byDay in the order of the sessions; a dash where there are none
 * @param days on how many it is trained directly
 * @param note whether too few or too many; empty text if neither
 */
record Sets(String muscle, List<String> byDay, String sum, String range, String days, String note) {

  static List<Sets> of(WeekPlan week, Catalogue catalogue) {
    return week.sets().stream().map(it -> of(it, catalogue)).toList();
  }

  private static Sets of(WeekSets sets, Catalogue catalogue) {
    return new Sets(
        Names.muscle(sets.muscle(), catalogue),
        sets.halfSetsByDay().stream().map(half -> half == 0 ? "–" : English.halves(half)).toList(),
        English.halves(sets.halfSets()),
        sets.range().least() + " to " + sets.range().most(),
        String.valueOf(sets.days()),
        note(sets));
  }

  private static String note(WeekSets sets) {
    int half = sets.halfSets();
    return half < 2 * sets.range().least() ? "low" : half > 2 * sets.range().most() ? "high" : "";
  }
}
