package counterset.report.html;

import counterset.explain.BlockWords;
import counterset.explain.ScoreWords;
import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.WeekPlan;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;

/**
 * All that a page shows of one week.
 *
 * @param id goes before the ids of its parts
 * @param name which week of a block; empty text if it is the only one
 * @param broken rules of the week that it breaks
 * @param unmet wishes for the week that it leaves unmet
 * @param points of the sessions and of each constraint of the week
 */
record WeekView(
    String id,
    String name,
    String title,
    List<String> broken,
    List<String> unmet,
    boolean interrupted,
    List<Day> days,
    List<Sets> sets,
    String score,
    List<Line> points) {

  /**
   * A day of the week.
   *
   * @param week which week of a block; empty text if it is the only one
   * @param number which session it is, in words
   */
  record Day(
      String week,
      String name,
      String shortName,
      String number,
      String length,
      String supersets,
      String points,
      boolean breaks,
      SessionView session) {}

  static WeekView of(
      WeekPlan week, Catalogue catalogue, Pictures pictures, String id, String name) {
    WeekWords words = new WeekWords(week, catalogue);
    List<Day> days = new ArrayList<>();
    for (int i = 0; i < week.plans().size(); i++) {
      days.add(day(week, i, catalogue, pictures, id, name));
    }
    return new WeekView(
        id,
        name,
        week.problem().title(),
        words.brokenRules(),
        words.unmetWishes(),
        !week.solver().complete(),
        days,
        Sets.of(week, catalogue),
        Worth.score(week.score()),
        points(week, words));
  }

  private static Day day(
      WeekPlan week, int number, Catalogue catalogue, Pictures pictures, String id, String name) {
    Plan plan = week.plans().get(number);
    String day = WeekWords.day(week.problem().sessions().get(number).day());
    String shortDay = WeekWords.shortDay(week.problem().sessions().get(number).day());
    return new Day(
        name,
        day,
        shortDay,
        "session " + (number + 1) + " of " + week.plans().size(),
        Times.clock(plan.totals().seconds()) + " of " + Times.clock(60 * plan.problem().minutes()),
        English.count(plan.totals().supersets(), BlockWords.name(plan)),
        ScoreWords.points(plan.score().soft()),
        !plan.score().feasible(),
        SessionView.inWeek(plan, catalogue, pictures, id + shortDay + "-"));
  }

  private static List<Line> points(WeekPlan week, WeekWords words) {
    List<Line> points = new ArrayList<>();
    int sessions = week.plans().stream().mapToInt(plan -> plan.score().soft()).sum();
    points.add(new Line(ScoreWords.points(sessions), "All sessions by themselves"));
    for (PlanScore.Line line : week.score().lines()) {
      if (line.matches() > 0) {
        points.add(
            new Line(
                ScoreWords.points(line.score()),
                words.counted(line.id())
                    + (line.level().equals("soft") ? "" : " (" + line.level() + ")")));
      }
    }
    return points;
  }

  /** Whether there is something to warn of. */
  boolean warns() {
    return !broken.isEmpty() || !unmet.isEmpty() || interrupted;
  }

  boolean breaksRules() {
    return !broken.isEmpty();
  }

  boolean missesWishes() {
    return !unmet.isEmpty();
  }
}
