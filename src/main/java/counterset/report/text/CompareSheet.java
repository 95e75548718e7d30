package counterset.report.text;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.ConstraintRow;
import counterset.compare.Shared;
import counterset.compare.TradeOff;
import counterset.compare.Verdict;
import counterset.model.Catalogue;
import counterset.report.CompareWords;
import counterset.report.FigureRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A comparison as text. */
public final class CompareSheet {

  private final Comparison comparison;
  private final Catalogue catalogue;
  private final Page page;

  private CompareSheet(Comparison comparison, Catalogue catalogue, boolean colour) {
    this.comparison = comparison;
    this.catalogue = catalogue;
    this.page = new Page(colour);
  }

  /** Lines of at most 100 columns. */
  public static String of(Comparison comparison, Catalogue catalogue, boolean colour) {
    CompareSheet sheet = new CompareSheet(comparison, catalogue, colour);
    sheet.head();
    sheet.figures();
    sheet.verdict();
    sheet.constraints();
    sheet.tradeOffs();
    sheet.shared();
    sheet.orders();
    sheet.foot();
    return sheet.page.text();
  }

  private void head() {
    page.strong("", comparison.title().toUpperCase(Locale.ROOT));
    comparison.all().forEach(it -> page.plain(number(it.number()), CompareWords.listed(it)));
    for (Compared it : comparison.all()) {
      part(it, "cannot be led", it.reasons());
      part(it, "leaves unmet", it.feasible() ? it.wishes() : List.of());
    }
  }

  private void part(Compared plan, String what, List<String> lines) {
    if (!lines.isEmpty()) {
      page.blank();
      page.strong("", "OPTION " + plan.number() + " " + what.toUpperCase(Locale.ROOT));
      lines.forEach(line -> page.plain("  ", line));
    }
  }

  private void figures() {
    page.blank();
    page.strong("", "IN FIGURES  * the best of its row");
    Columns.write(
        page,
        heads(),
        FigureRow.of(comparison).stream()
            .map(
                row ->
                    new Columns.Row(
                        row.name(),
                        IntStream.range(0, row.cells().size())
                            .mapToObj(i -> new Columns.Cell(row.cells().get(i), row.best().get(i)))
                            .toList()))
            .toList());
  }

  private void verdict() {
    page.blank();
    page.strong("", "WHICH FOR WHOM");
    Verdict.of(comparison, catalogue).forEach(line -> page.plain("  ", line));
    CompareWords.yardstick(comparison).forEach(line -> page.faint("  ", line));
  }

  private void constraints() {
    List<ConstraintRow> differ =
        ConstraintRow.of(comparison).stream().filter(row -> !row.isEqual()).toList();
    String common = CompareWords.common(comparison);
    page.blank();
    page.strong("", "BY CONSTRAINT  " + CompareWords.measured(comparison));
    if (!differ.isEmpty()) {
      Columns.write(page, heads(), differ.stream().map(this::row).toList());
    }
    if (!common.isEmpty()) {
      page.plain("  The same in all: ", common);
    }
  }

  private Columns.Row row(ConstraintRow row) {
    return new Columns.Row(
        CompareWords.topic(row),
        IntStream.range(0, row.values().size())
            .mapToObj(i -> Columns.Cell.plain(CompareWords.value(comparison, row, i)))
            .toList());
  }

  private void tradeOffs() {
    if (comparison.feasible().size() < 2) {
      return;
    }
    for (TradeOff tradeOff : TradeOff.of(comparison)) {
      page.blank();
      page.strong("", "TRADE-OFF  " + CompareWords.title(tradeOff));
      CompareWords.caveat(comparison, tradeOff).ifPresent(line -> page.faint("  ", line));
      String format = "%8s  %17s  %19s  ";
      page.plain(
          String.format(
              Locale.ROOT, format, "option", tradeOff.across().title(), tradeOff.up().title()),
          "");
      for (TradeOff.Point point : tradeOff.points()) {
        page.plain(
            String.format(
                Locale.ROOT,
                format,
                point.plan().number(),
                CompareWords.across(point),
                CompareWords.up(tradeOff, point)),
            CompareWords.standing(point));
      }
    }
  }

  private void shared() {
    List<Shared> pairs = Shared.of(comparison);
    if (pairs.isEmpty()) {
      return;
    }
    page.blank();
    page.strong("", "ALIKE  exercises in common; variants of one exercise count as the same");
    List<Compared> plans = comparison.feasible();
    if (plans.size() <= 3) {
      pairs.forEach(pair -> page.plain("  ", CompareWords.shared(pair)));
      return;
    }
    List<Columns.Row> rows = new ArrayList<>();
    for (Compared row : plans) {
      rows.add(
          new Columns.Row(
              "option " + row.number(),
              plans.stream()
                  .map(column -> Columns.Cell.plain(CompareWords.shared(pairs, row, column)))
                  .toList()));
    }
    Columns.write(page, plans.stream().map(it -> String.valueOf(it.number())).toList(), rows);
  }

  private void orders() {
    for (Compared it : CompareWords.shownWhole(comparison)) {
      page.blank();
      page.strong("", "OPTION " + it.number() + "  " + it.label());
      OrderPart.lines(page, it.plan());
    }
  }

  private void foot() {
    page.blank();
    page.faint("", CompareWords.CAUTION);
  }

  private List<String> heads() {
    return comparison.all().stream().map(it -> String.valueOf(it.number())).toList();
  }

  private static String number(int number) {
    return String.format(Locale.ROOT, "  %2d  ", number);
  }
}
