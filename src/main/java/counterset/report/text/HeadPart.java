package counterset.report.text;

import counterset.explain.BlockWords;
import counterset.explain.FaultWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Intervals;
import counterset.model.Limitation;
import counterset.model.Plan;
import counterset.model.Target;
import counterset.report.Times;
import java.util.List;
import java.util.Locale;

/** What is wrong, if anything, and the session at one glance. */
final class HeadPart {

  private HeadPart() {}

  static void write(Page page, Plan plan, Catalogue catalogue) {
    page.strong("", plan.problem().title().toUpperCase(Locale.ROOT));
    warnings(page, plan, catalogue);
    page.plain("Length       ", length(plan));
    page.plain("Clock        ", clock(plan.problem().clock()));
    page.plain("Level        ", String.valueOf(plan.problem().level()));
    List<String> targets =
        plan.problem().targets().stream().map(target -> target(target, catalogue)).toList();
    page.plain("Targets      ", English.list(targets));
    List<String> limits =
        plan.problem().limitations().stream()
            .map(catalogue.limitations()::get)
            .map(Limitation::name)
            .toList();
    page.plain("Limitations  ", limits.isEmpty() ? "none" : English.list(limits));
    TrackPart.head(page, plan, catalogue);
  }

  private static void warnings(Page page, Plan plan, Catalogue catalogue) {
    List<String> broken = faults(plan, catalogue, true);
    if (!plan.score().feasible()) {
      String places = English.count(broken.size(), "place");
      page.strong("", "DO NOT LEAD THIS AS IT IS: it breaks rules in " + places + ".");
      broken.forEach(line -> page.strong("  ! ", line));
    }
    if (plan.totals().supersets() == 0) {
      String minutes = English.count(plan.problem().minutes(), "minute");
      page.strong(
          "",
          "NOTHING TO DO: no "
              + BlockWords.name(plan)
              + " fits "
              + minutes
              + " with these wishes.");
    }
    if (!plan.solver().complete()) {
      page.strong("", "Interrupted: the best plan found so far.");
    }
    List<String> unmet = faults(plan, catalogue, false);
    if (!unmet.isEmpty()) {
      page.strong("", "NOT MET:");
      unmet.forEach(line -> page.plain("  - ", line));
    }
  }

  private static List<String> faults(Plan plan, Catalogue catalogue, boolean hard) {
    return plan.matches().stream()
        .filter(FaultWords::isFault)
        .filter(match -> FaultWords.isBrokenRule(match) == hard)
        .map(match -> FaultWords.of(match, plan, catalogue))
        .distinct()
        .toList();
  }

  private static String length(Plan plan) {
    Intervals clock = plan.problem().clock();
    String rounds = clock.rounds() == 1 ? "" : ", " + clock.rounds() + " rounds each";
    String blocks = English.count(plan.totals().supersets(), BlockWords.name(plan));
    return Times.clock(plan.totals().seconds())
        + " of "
        + Times.clock(60 * plan.problem().minutes())
        + ", "
        + blocks
        + rounds;
  }

  private static String clock(Intervals clock) {
    String between = clock.between() == 0 ? "" : ", " + clock.between() + " s to switch";
    return clock.work() + " s work" + between + ", " + clock.rest() + " s rest";
  }

  private static String target(Target target, Catalogue catalogue) {
    String name = catalogue.muscles().get(target.muscle()).name().toLowerCase(Locale.ROOT);
    return target.emphasis() == 1 ? name : name + " (x" + target.emphasis() + ")";
  }
}
