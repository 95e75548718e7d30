package counterset.problem;

import counterset.json.Cursor;
import counterset.model.Problem;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The values of a week file without faults, defaults filled in. */
final class WeekValues {

  static final String DEFAULT_TITLE = "Week";

  private WeekValues() {}

  /**
   * The week.
   *
   * @param problems of its sessions, in the order of the file
   */
  static WeekProblem read(Cursor week, List<Problem> problems) {
    List<WeekSession> sessions = new ArrayList<>();
    for (Cursor session : week.field("sessions").elements()) {
      sessions.add(new WeekSession(day(session), problems.get(sessions.size())));
    }
    sessions.sort(Comparator.comparing(WeekSession::day));
    Cursor shared = week.field("shared").field("seed");
    return new WeekProblem(
        week.field("title").text().orElse(DEFAULT_TITLE),
        sessions,
        week.field("earlier").elements().stream().map(WeekValues::earlier).toList(),
        ranges(week.field("setRanges")),
        week.field("recoveryIsRule").bool().orElse(false),
        numbers(week.field("weights")),
        week.field("seed").whole().or(shared::whole).orElse(ProblemValues.DEFAULT_SEED));
  }

  private static DayOfWeek day(Cursor session) {
    return DayOfWeek.valueOf(session.field("day").text().orElseThrow().toUpperCase(Locale.ROOT));
  }

  private static EarlierSession earlier(Cursor at) {
    return new EarlierSession(
        at.field("daysBeforeMonday").integer().orElseThrow(),
        at.field("exercises").texts(),
        numbers(at.field("directSets")));
  }

  private static Map<String, SetRange> ranges(Cursor at) {
    Map<String, SetRange> ranges = new LinkedHashMap<>();
    at.entries()
        .forEach(
            (muscle, range) ->
                ranges.put(
                    muscle,
                    new SetRange(
                        range.field("least").integer().orElseThrow(),
                        range.field("most").integer().orElseThrow())));
    return ranges;
  }

  private static Map<String, Integer> numbers(Cursor at) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    at.entries().forEach((id, number) -> numbers.put(id, number.integer().orElseThrow()));
    return numbers;
  }
}
