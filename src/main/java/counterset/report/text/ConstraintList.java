package counterset.report.text;

import counterset.explain.ConstraintWords;
import java.util.List;
import java.util.Locale;

/** The catalogue of constraints. */
public final class ConstraintList {

  private ConstraintList() {}

  /** Lines of at most 100 columns. */
  public static String of(List<ConstraintWords> constraints, boolean colour) {
    Page page = new Page(colour);
    String before = "";
    for (ConstraintWords constraint : constraints) {
      String group = constraint.scope() + ", " + constraint.level();
      if (!group.equals(before)) {
        if (!before.isEmpty()) {
          page.blank();
        }
        page.strong("", group.toUpperCase(Locale.ROOT));
        before = group;
      }
      String sign = constraint.reward() ? "+" : "-";
      page.strong("  ", constraint.id());
      page.plain("      ", constraint.sentence());
      page.plain("      ", sign + constraint.weight() + " " + constraint.unit());
    }
    return page.text();
  }
}
