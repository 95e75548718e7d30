package counterset.report.html;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.ConstraintRow;
import counterset.compare.Shared;
import counterset.compare.TradeOff;
import counterset.compare.Verdict;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Superset;
import counterset.report.CompareWords;
import counterset.report.FigureRow;
import java.util.List;
import java.util.stream.IntStream;

/** A comparison as a page: tables, sentences and the trade-offs as pictures. */
public final class ComparePage {

  private final Comparison comparison;
  private final Catalogue catalogue;

  private ComparePage(Comparison comparison, Catalogue catalogue) {
    this.comparison = comparison;
    this.catalogue = catalogue;
  }

  /**
   * A plan in the list of all.
   *
   * @param reasons why it cannot be led
   * @param wishes that it leaves unmet
   */
  record Choice(int number, String label, List<String> reasons, List<String> wishes) {

    boolean cannotBeLed() {
      return !reasons.isEmpty();
    }

    boolean missesWishes() {
      return !wishes.isEmpty();
    }
  }

  /** A cell of a table; the best of its row is marked. */
  record Cell(String text, boolean best) {}

  /** A row of a table. */
  record Cells(String name, List<Cell> cells) {}

  /** The supersets of a plan, in their order. */
  record Order(int number, List<String> supersets) {}

  /** A row of the table below a picture. */
  record Standing(int number, String label, String across, String up, String standing) {}

  /** A trade-off: its picture, and the same as a table. */
  record Trade(String id, String title, String caveat, Plot plot, List<Standing> standings) {}

  /** The text of an HTML file. */
  public static String of(Comparison comparison, Catalogue catalogue) {
    ComparePage page = new ComparePage(comparison, catalogue);
    return new Document(
            comparison.title(),
            Resource.all("colours.css", "page.css", "sheet.css", "compare.css", "print.css"),
            Script.of("theme.js", "start-week.js"),
            Template.fill("compare-page", page))
        .text();
  }

  String title() {
    return comparison.title();
  }

  String caution() {
    return CompareWords.CAUTION;
  }

  List<Choice> choices() {
    return comparison.all().stream()
        .map(
            it ->
                new Choice(
                    it.number(),
                    CompareWords.listed(it),
                    it.reasons(),
                    it.feasible() ? it.wishes() : List.of()))
        .toList();
  }

  List<Cells> figures() {
    return FigureRow.of(comparison).stream()
        .map(
            row ->
                new Cells(
                    row.name(),
                    IntStream.range(0, row.cells().size())
                        .mapToObj(i -> new Cell(row.cells().get(i), row.best().get(i)))
                        .toList()))
        .toList();
  }

  List<String> verdict() {
    return Verdict.of(comparison, catalogue);
  }

  List<String> yardstick() {
    return CompareWords.yardstick(comparison);
  }

  String measured() {
    return English.capital(CompareWords.measured(comparison));
  }

  List<Cells> constraints() {
    return ConstraintRow.of(comparison).stream()
        .filter(row -> !row.isEqual())
        .map(
            row ->
                new Cells(
                    CompareWords.topic(row),
                    IntStream.range(0, row.values().size())
                        .mapToObj(i -> new Cell(CompareWords.value(comparison, row, i), false))
                        .toList()))
        .toList();
  }

  boolean differ() {
    return !constraints().isEmpty();
  }

  /** What is the same in all; empty text if nothing is. */
  String common() {
    return CompareWords.common(comparison);
  }

  /** Nothing is traded where there is no choice. */
  List<Trade> trades() {
    return comparison.feasible().size() < 2
        ? List.of()
        : TradeOff.of(comparison).stream().map(this::trade).toList();
  }

  private Trade trade(TradeOff tradeOff) {
    return new Trade(
        tradeOff.up().id(),
        English.capital(CompareWords.title(tradeOff)),
        CompareWords.caveat(comparison, tradeOff).orElse(""),
        Plot.of(tradeOff),
        tradeOff.points().stream()
            .map(
                it ->
                    new Standing(
                        it.plan().number(),
                        it.plan().label(),
                        CompareWords.across(it),
                        CompareWords.up(tradeOff, it),
                        CompareWords.standing(it)))
            .toList());
  }

  List<Compared> led() {
    return comparison.feasible();
  }

  boolean alike() {
    return led().size() > 1;
  }

  List<Cells> shared() {
    List<Shared> pairs = Shared.of(comparison);
    return led().stream()
        .map(
            row ->
                new Cells(
                    "Option " + row.number(),
                    led().stream()
                        .map(column -> new Cell(CompareWords.shared(pairs, row, column), false))
                        .toList()))
        .toList();
  }

  /** None where the problems differ, or where there are too many to be read side by side. */
  List<Order> orders() {
    return CompareWords.shownWhole(comparison).stream()
        .map(
            it ->
                new Order(
                    it.number(),
                    it.plan().session().supersets().stream().map(ComparePage::names).toList()))
        .toList();
  }

  boolean showsOrders() {
    return !orders().isEmpty();
  }

  private static String names(Superset superset) {
    String names = String.join(" + ", superset.distinct().stream().map(Exercise::name).toList());
    return superset.isUnilateral() ? names + ", left then right" : names;
  }
}
