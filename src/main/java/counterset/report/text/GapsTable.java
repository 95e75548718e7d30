package counterset.report.text;

import counterset.catalogue.Gaps;
import counterset.catalogue.LimitationGaps;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Where the catalogue is thin, as text. */
public final class GapsTable {

  private GapsTable() {}

  /** By muscle group, equipment and limitation. */
  public static String of(Gaps gaps) {
    return "Nothing at all:\n"
        + cells(gaps.empty())
        + "Fewer than "
        + Gaps.ENOUGH
        + ":\n"
        + cells(gaps.thin());
  }

  private static String cells(List<Gaps.Cell> cells) {
    return cells.stream()
        .map(
            cell ->
                String.format(
                    Locale.ROOT,
                    "  %-16s %-16s %-20s %d\n",
                    cell.muscle(),
                    cell.equipment().orElse("no equipment"),
                    cell.limitation().orElse("no limitation"),
                    cell.count()))
        .collect(Collectors.joining());
  }

  /** By limitation and pair of limitations. */
  public static String of(LimitationGaps gaps) {
    if (gaps.missing().isEmpty()) {
      return "Nothing is missing: every target keeps "
          + LimitationGaps.ENOUGH_FOR_ONE
          + " or more exercises for each limitation and "
          + LimitationGaps.ENOUGH_FOR_TWO
          + " or more for each pair.\n";
    }
    return gaps.missing().stream()
        .map(
            cell ->
                String.format(
                    Locale.ROOT,
                    "%-42s %-16s %d of %d\n",
                    String.join(" + ", cell.limitations()),
                    cell.muscle(),
                    cell.count(),
                    cell.enough()))
        .collect(Collectors.joining());
  }
}
