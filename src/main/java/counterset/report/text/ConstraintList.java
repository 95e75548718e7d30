package counterset.report.text;

import counterset.score.Constraint;
import java.util.List;
import java.util.Locale;

/** The catalogue of constraints. */
public final class ConstraintList {

  private ConstraintList() {}

  /** Lines of at most 100 columns. */
  public static String of(List<Constraint> constraints, boolean colour) {
    Page page = new Page(colour);
    String before = "";
    for (Constraint constraint : constraints) {
      String group = constraint.scope() + ", " + constraint.level().id();
      if (!group.equals(before)) {
        if (!before.isEmpty()) {
          page.blank();
        }
        page.strong("", group.toUpperCase(Locale.ROOT));
        before = group;
      }
      String sign = constraint.isReward() ? "+" : "-";
      page.strong("  ", constraint.id());
      page.plain("      ", constraint.sentence());
      page.plain("      ", sign + constraint.defaultWeight() + " " + constraint.unit());
    }
    return page.text();
  }
}
