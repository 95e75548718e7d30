package counterset.report.text;

import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.Times;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** All supersets, a line each. */
final class OrderPart {

  private OrderPart() {}

  static void write(Page page, Plan plan) {
    if (plan.session().supersets().isEmpty()) {
      return;
    }
    page.blank();
    page.strong("", "ORDER");
    lines(page, plan);
  }

  /** A line for each superset. */
  static void lines(Page page, Plan plan) {
    for (Superset superset : plan.session().supersets()) {
      String time = start(plan, superset).map(Times::clock).orElse("-");
      page.plain(
          String.format(Locale.ROOT, "  %2d  %6s  ", superset.number(), time), names(superset));
    }
  }

  private static Optional<Integer> start(Plan plan, Superset superset) {
    return plan.timeline().stream()
        .filter(interval -> interval.kind() == IntervalKind.WORK)
        .filter(interval -> interval.at().orElseThrow().superset() == superset.number())
        .map(Interval::start)
        .findFirst();
  }

  private static String names(Superset superset) {
    if (superset.exercises().isEmpty()) {
      return "not filled";
    }
    List<String> names = superset.distinct().stream().map(Exercise::name).toList();
    return String.join("  +  ", names) + (superset.isUnilateral() ? ", left then right" : "");
  }
}
