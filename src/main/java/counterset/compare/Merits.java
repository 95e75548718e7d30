package counterset.compare;

import counterset.model.English;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What one plan has better and what it has worse than another, in clauses.
 *
 * @param gains such as {@code 14 points more over the same 20 minutes}
 * @param losses in the same words
 * @param wants what is wanted by those who prefer the plan, such as {@code less to fetch}
 */
record Merits(List<String> gains, List<String> losses, List<String> wants) {

  /** A smaller difference is one of rounding, not one that a client feels; in per cent. */
  private static final int FELT_SHARE = 5;

  /** A smaller difference is within how fast people are; in seconds. */
  private static final int FELT_SECONDS = 5;

  static Merits of(Compared plan, Compared other) {
    Facts here = plan.facts();
    Facts there = other.facts();
    Merits merits = new Merits(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    merits.fewer(there.unmetWishes() - here.unmetWishes(), "unmet wish", "");
    merits.points(plan, other);
    merits.share(percent(here), percent(there));
    merits.handling(here, there);
    merits.floor(there.floorTrips() - here.floorTrips());
    return merits;
  }

  private void points(Compared plan, Compared other) {
    Facts here = plan.facts();
    Facts there = other.facts();
    if (Comparison.haveOneShape(plan, other)) {
      int more = here.points() - there.points();
      String over =
          Comparison.haveOneProblem(plan, other)
              ? ""
              : here.minutes() == there.minutes()
                  ? " over the same " + English.count(here.minutes(), "minute")
                  : " over as many supersets";
      add(more, points(String.valueOf(Math.abs(more)), more > 0) + over);
      return;
    }
    BigDecimal more =
        rounded(here.pointsPerSuperset()).subtract(rounded(there.pointsPerSuperset()));
    String number = more.abs().stripTrailingZeros().toPlainString();
    add(more.signum(), points(number, more.signum() > 0) + " a superset");
  }

  private static String points(String number, boolean more) {
    return number + (number.equals("1") ? " point " : " points ") + (more ? "more" : "less");
  }

  private void share(int here, int there) {
    if (Math.abs(here - there) >= FELT_SHARE) {
      add(here - there, "equipment in " + here + " % instead of " + there + " % of the work");
      want(here > there, "more lifting");
    }
  }

  private void handling(Facts here, Facts there) {
    int fetched = there.fetched() - here.fetched();
    int handled = there.handled() - here.handled();
    int seconds = there.changeover() - here.changeover();
    boolean felt = Math.abs(seconds) >= FELT_SECONDS;
    fewer(fetched, "thing", " to fetch");
    fewer(handled, "equipment change", "");
    if (felt) {
      add(seconds, Math.abs(seconds) + " s " + (seconds > 0 ? "less" : "more") + " changing over");
    }
    want(fetched > 0, "less to fetch");
    boolean slower = felt && seconds < 0;
    boolean quicker = felt && seconds > 0;
    want(handled > 0 && !slower || handled == 0 && quicker, "less changing over");
  }

  private void floor(int fewer) {
    fewer(fewer, "trip", " to or from the floor");
    want(fewer > 0, "fewer trips to the floor");
  }

  /** One plan has so many fewer of something of which few are better. */
  private void fewer(int fewer, String noun, String rest) {
    int number = Math.abs(fewer);
    String nouns = number == 1 ? noun : noun.endsWith("wish") ? noun + "es" : English.plural(noun);
    add(fewer, number + (fewer > 0 ? " fewer " : " more ") + nouns + rest);
  }

  private void add(int better, String clause) {
    if (better != 0) {
      (better > 0 ? gains : losses).add(clause);
    }
  }

  private void want(boolean holds, String what) {
    if (holds) {
      wants.add(what);
    }
  }

  private static int percent(Facts facts) {
    return (int) Math.round(100 * facts.loadedShare());
  }

  private static BigDecimal rounded(double number) {
    return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
  }
}
