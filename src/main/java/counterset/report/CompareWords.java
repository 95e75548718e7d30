package counterset.report;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.ConstraintRow;
import counterset.compare.Shared;
import counterset.compare.TradeOff;
import counterset.compare.TradeOff.Aim;
import counterset.explain.ScoreWords;
import counterset.model.English;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The words that every form of a comparison shows. */
public final class CompareWords {

  /** What a comparison does not do. */
  public static final String CAUTION =
      "Points compare sessions; they do not examine clients. The cautions on each run sheet hold.";

  /** More sessions than this are too long to be read side by side. */
  private static final int MOST_ORDERS = 4;

  private CompareWords() {}

  /** The plans whose supersets are shown: of one problem, the sessions are the difference. */
  public static List<Compared> shownWhole(Comparison comparison) {
    List<Compared> plans = comparison.feasible();
    boolean shown = comparison.sameProblem() && plans.size() <= MOST_ORDERS;
    return shown ? plans : List.of();
  }

  /** How far points may be compared, a sentence each; empty if they just are. */
  public static List<String> yardstick(Comparison comparison) {
    List<String> lines = new ArrayList<>();
    if (!comparison.sameProblem()) {
      lines.add(
          "The problems differ, so points are compared a superset: each score says how well a"
              + " session does what its own problem asks.");
    }
    if (!comparison.sameSupersets()) {
      lines.add(
          "The supersets themselves differ (exercises in each, or rounds), so even that compares"
              + " only roughly.");
    }
    return lines;
  }

  /** What the numbers by constraint are. */
  public static String measured(Comparison comparison) {
    return (comparison.sameShape() ? "points" : "points a superset")
        + ", rules and wishes first, then the widest differences";
  }

  /** What a constraint is about; one that is more than a matter of points says so. */
  public static String topic(ConstraintRow row) {
    return row.level().equals("soft")
        ? row.topic()
        : row.topic() + (row.level().equals("hard") ? " (rule)" : " (wish)");
  }

  /** What a constraint makes of one plan; a dash if there is no work in it. */
  public static String value(Comparison comparison, ConstraintRow row, int plan) {
    if (row.values().get(plan).isEmpty()) {
      return "–";
    }
    boolean whole = comparison.sameShape() || !row.level().equals("soft");
    return whole
        ? ScoreWords.points(row.points().get(plan))
        : FigureRow.signed(row.values().get(plan).getAsDouble());
  }

  /** The constraints that say the same of all, with what they say; empty text if none does. */
  public static String common(Comparison comparison) {
    return String.join(
        "; ",
        ConstraintRow.of(comparison).stream()
            .filter(row -> row.isEqual() && !row.isSilent())
            .map(row -> English.lower(row.topic()) + " " + common(comparison, row))
            .toList());
  }

  private static String common(Comparison comparison, ConstraintRow row) {
    return IntStream.range(0, row.values().size())
        .filter(plan -> row.values().get(plan).isPresent())
        .mapToObj(plan -> value(comparison, row, plan))
        .findFirst()
        .orElse("–");
  }

  /** A plan in the list of all: what tells it from the others, and the title of a file. */
  public static String listed(Compared plan) {
    String title = plan.plan().problem().title();
    boolean file = plan.label().endsWith(".json");
    return file && !title.isBlank() ? plan.label() + ": " + title : plan.label();
  }

  /** What is traded for what. */
  public static String title(TradeOff tradeOff) {
    return tradeOff.up() == Aim.POINTS
        ? "points against minutes"
        : "work with equipment against equipment changes";
  }

  /** What to bear in mind when reading a trade-off. */
  public static Optional<String> caveat(Comparison comparison, TradeOff tradeOff) {
    return tradeOff.up() == Aim.POINTS && !comparison.sameProblem()
        ? Optional.of(
            "Whole sessions of different problems; how good each is for its length, the points a"
                + " superset say.")
        : Optional.empty();
  }

  /** How much a plan has of what should be little. */
  public static String across(TradeOff.Point point) {
    return Numbers.rounded(point.across(), 1);
  }

  /** How much a plan has of what should be much. */
  public static String up(TradeOff tradeOff, TradeOff.Point point) {
    return tradeOff.up() == Aim.POINTS
        ? ScoreWords.points(point.plan().facts().points())
        : FigureRow.percent(point.plan().facts().loadedShare());
  }

  /** Whether anything beats a plan. */
  public static String standing(TradeOff.Point point) {
    if (point.onFront()) {
      return "on the front";
    }
    return "beaten by "
        + English.list(point.beatenBy().stream().map(number -> String.valueOf(number)).toList());
  }

  /** What two plans have in common, as a sentence. */
  public static String shared(Shared pair) {
    if (pair.exercises() == 0) {
      return "Options " + pair.one() + " and " + pair.other() + " share no exercise.";
    }
    String of =
        pair.ofOne() == pair.ofOther()
            ? String.valueOf(pair.ofOne())
            : pair.ofOne() + " and " + pair.ofOther();
    return "Options "
        + pair.one()
        + " and "
        + pair.other()
        + " share "
        + pair.exercises()
        + " of their "
        + of
        + " exercises.";
  }

  /** What two plans have in common, as a number; a dash for a plan and itself. */
  public static String shared(List<Shared> pairs, Compared one, Compared other) {
    int first = Math.min(one.number(), other.number());
    int second = Math.max(one.number(), other.number());
    return pairs.stream()
        .filter(pair -> pair.one() == first && pair.other() == second)
        .findFirst()
        .map(pair -> String.valueOf(pair.exercises()))
        .orElse("–");
  }
}
