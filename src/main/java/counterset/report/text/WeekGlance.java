package counterset.report.text;

import counterset.explain.ScoreWords;
import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekSets;
import counterset.model.WeekSession;
import counterset.report.Times;
import counterset.training.WeeklySets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The week at a glance: muscle groups by days, what the week adds up to and what it costs. */
final class WeekGlance {

  private static final int LONGEST_NAME = 24;

  private final Page page;
  private final WeekPlan week;
  private final Catalogue catalogue;
  private final WeekWords words;

  private WeekGlance(Page page, WeekPlan week, Catalogue catalogue) {
    this.page = page;
    this.week = week;
    this.catalogue = catalogue;
    this.words = new WeekWords(week, catalogue);
  }

  static void write(Page page, WeekPlan week, Catalogue catalogue) {
    WeekGlance glance = new WeekGlance(page, week, catalogue);
    glance.head();
    glance.sets();
    glance.cost();
  }

  private void head() {
    page.strong("", week.problem().title().toUpperCase(Locale.ROOT));
    words.brokenRules().forEach(line -> page.strong("  ! ", line));
    if (!week.solver().complete()) {
      page.strong("", "Interrupted: the best week found so far.");
    }
    words.unmetWishes().forEach(line -> page.plain("  - ", line));
    for (int i = 0; i < week.plans().size(); i++) {
      Plan plan = week.plans().get(i);
      page.plain(
          String.format(Locale.ROOT, "%-11s", WeekWords.day(session(i).day())),
          Times.clock(plan.totals().seconds())
              + " of "
              + Times.clock(60 * plan.problem().minutes())
              + ", "
              + English.count(plan.totals().supersets(), "superset")
              + ", "
              + ScoreWords.count(plan.score().soft())
              + (plan.score().feasible() ? "" : ", BREAKS A RULE"));
    }
  }

  private WeekSession session(int number) {
    return week.problem().sessions().get(number);
  }

  private void sets() {
    page.blank();
    page.strong("", "THE WEEK AT A GLANCE  sets by target and day");
    List<String> days = new ArrayList<>();
    week.problem().sessions().forEach(it -> days.add(WeekWords.shortDay(it.day())));
    row("Target", days, "Week", "Range", "Days", "");
    for (WeekSets sets : week.sets()) {
      row(
          name(sets.muscle()),
          sets.halfSetsByDay().stream()
              .map(half -> half == 0 ? "-" : English.halves(half))
              .toList(),
          English.halves(sets.halfSets()),
          sets.range().least() + "-" + sets.range().most(),
          String.valueOf(sets.days()),
          note(sets));
    }
    page.faint(
        "  ",
        "Sets: direct ones and half of the indirect ones (fractional counting: Pelland 2024)."
            + " Range: what the week asks for; unless it says otherwise at least 4 a week (Iversen"
            + " 2021) and at most 12 (common practice, no source). Days: with a direct set; at least "
            + WeeklySets.LEAST_DAYS
            + " for every major muscle group (WHO 2020). A muscle group rests 48 h between sessions"
            + " (Garber 2011).");
  }

  private String name(String muscle) {
    String name = Names.muscle(muscle, catalogue);
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + ".";
  }

  private static String note(WeekSets sets) {
    int half = sets.halfSets();
    return half < 2 * sets.range().least() ? "LOW" : half > 2 * sets.range().most() ? "HIGH" : "";
  }

  private void row(
      String name, List<String> days, String sum, String range, String count, String note) {
    StringBuilder line =
        new StringBuilder(String.format(Locale.ROOT, "%-" + LONGEST_NAME + "s", name));
    days.forEach(cell -> line.append(String.format(Locale.ROOT, "%6s", cell)));
    line.append(String.format(Locale.ROOT, "%8s%8s%6s  %s", sum, range, count, note));
    page.plain("  ", line.toString());
  }

  private void cost() {
    PlanScore score = week.score();
    page.blank();
    page.strong(
        "",
        "SCORE OF THE WEEK  " + ScoreWords.sentence(score.hard(), score.medium(), score.soft()));
    int sessions = week.plans().stream().mapToInt(plan -> plan.score().soft()).sum();
    page.plain(lead(sessions), "All sessions by themselves");
    for (PlanScore.Line line : score.lines()) {
      if (line.matches() > 0) {
        String level = line.level().equals("soft") ? "" : " (" + line.level() + ")";
        page.plain(lead(line.score()), words.counted(line.id()) + level);
      }
    }
  }

  private static String lead(int points) {
    return String.format(Locale.ROOT, "%6s  ", ScoreWords.points(points));
  }
}
