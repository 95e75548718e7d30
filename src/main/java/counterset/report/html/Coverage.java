package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.TargetCoverage;
import counterset.report.Numbers;
import java.util.List;
import java.util.Locale;

/**
 * How far each target is covered, as bars with numbers.
 *
 * @param direct the width of the bar of direct sets, in per cent
 * @param indirect the width of the bar of indirect sets behind it, halved, in per cent
 * @param wanted where the direct sets asked for end, in per cent
 * @param isShort whether fewer direct sets than asked for
 */
record Coverage(
    String muscle,
    String sets,
    String counted,
    String direct,
    String indirect,
    String wanted,
    boolean isShort) {

  /** One for each target, in the order of the problem. */
  static List<Coverage> of(Plan plan, Catalogue catalogue) {
    double most =
        plan.coverage().stream()
            .mapToDouble(it -> Math.max(it.sets(), it.minSets()))
            .reduce(1, Math::max);
    return plan.coverage().stream().map(it -> of(it, most, catalogue)).toList();
  }

  private static Coverage of(TargetCoverage target, double most, Catalogue catalogue) {
    return new Coverage(
        Names.muscle(target.muscle(), catalogue),
        String.format(Locale.ROOT, "%.1f", target.sets()),
        target.direct()
            + " direct, "
            + target.indirect()
            + " indirect, "
            + target.minSets()
            + " wanted",
        percent(target.direct() / most),
        percent(0.5 * target.indirect() / most),
        percent(target.minSets() / most),
        !target.isCovered());
  }

  private static String percent(double share) {
    return Numbers.rounded(100 * share, 2) + "%";
  }
}
