package counterset.report;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.Facts;
import counterset.explain.ScoreWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One figure of each plan of a comparison, as pages show it.
 *
 * @param cells as many as there are plans; a dash where a plan has no such figure
 * @param best for each plan, whether none that can be led is better in this; never where all are
 *     the same, or where neither more nor less is better
 */
public record FigureRow(String name, List<String> cells, List<Boolean> best) {

  public FigureRow {
    cells = List.copyOf(cells);
    best = List.copyOf(best);
  }

  /** All figures, what matters most first. */
  public static List<FigureRow> of(Comparison comparison) {
    Rows rows = new Rows(comparison);
    boolean same = comparison.sameProblem();
    rows.plain("Can be led", it -> it.feasible() ? "yes" : "no");
    rows.plain("Broken rules", it -> number(it.brokenRules()));
    rows.less("Unmet wishes", it -> number(it.unmetWishes()), Facts::unmetWishes);
    if (same) {
      rows.more("Points", it -> ScoreWords.points(it.points()), Facts::points);
      rows.plain("Points a superset", it -> signed(it.pointsPerSuperset()));
    } else {
      rows.more(
          "Points a superset", it -> signed(it.pointsPerSuperset()), Facts::pointsPerSuperset);
      rows.plain("Points in all", it -> ScoreWords.points(it.points()));
    }
    rows.plain("Supersets", it -> number(it.supersets()));
    rows.plain("Length", it -> Times.clock(it.seconds()));
    rows.less("Things to fetch", it -> number(it.fetched()), Facts::fetched);
    rows.less("Equipment changes", it -> number(it.handled()), Facts::handled);
    rows.less("Changing over, seconds", it -> number(it.changeover()), Facts::changeover);
    rows.more("Work with equipment", it -> percent(it.loadedShare()), Facts::loadedShare);
    rows.less("Trips to or from the floor", it -> number(it.floorTrips()), Facts::floorTrips);
    rows.more(
        "Targets covered",
        it -> it.covered() + "/" + it.targets(),
        it -> (double) it.covered() / it.targets());
    return rows.all;
  }

  /** With its sign and one decimal: {@code +3.1}, {@code 0.0}. */
  public static String signed(double number) {
    String text = Numbers.fixed(number, 1);
    return text.startsWith("-")
        ? text.equals("-0.0") ? "0.0" : text
        : text.equals("0.0") ? text : "+" + text;
  }

  /** A share from 0 to 1 in whole per cent. */
  public static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private static String number(int number) {
    return String.valueOf(number);
  }

  private static final class Rows {

    private final Comparison comparison;
    private final List<FigureRow> all = new ArrayList<>();

    Rows(Comparison comparison) {
      this.comparison = comparison;
    }

    void plain(String name, Function<Facts, String> text) {
      add(name, text, it -> 0);
    }

    void more(String name, Function<Facts, String> text, ToDoubleFunction<Facts> value) {
      add(name, text, value);
    }

    void less(String name, Function<Facts, String> text, ToDoubleFunction<Facts> value) {
      add(name, text, it -> -value.applyAsDouble(it));
    }

    private void add(String name, Function<Facts, String> text, ToDoubleFunction<Facts> worth) {
      List<Double> worths =
          comparison.feasible().stream().map(it -> worth.applyAsDouble(it.facts())).toList();
      double most = worths.stream().mapToDouble(it -> it).max().orElse(0);
      boolean differ = worths.stream().distinct().count() > 1;
      all.add(
          new FigureRow(
              name,
              comparison.all().stream().map(it -> cell(it, name, text)).toList(),
              comparison.all().stream()
                  .map(it -> differ && it.feasible() && worth.applyAsDouble(it.facts()) == most)
                  .toList()));
    }

    /** A session without work has nothing to count but what is missing. */
    private static String cell(Compared it, String name, Function<Facts, String> text) {
      boolean empty = it.facts().supersets() == 0;
      return empty && !name.equals("Can be led") ? "–" : text.apply(it.facts());
    }
  }
}
