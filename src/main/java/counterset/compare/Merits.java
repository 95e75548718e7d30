package counterset.compare;

import counterset.explain.English;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What one plan has better and what it has worse than another, in clauses.
 *
 * @param gains such as {@code 14 points more over the same 20 minutes}
 * @param losses in the same words
 * @param wants what a client who prefers the plan wants, as clauses after "clients who"
 */
record Merits(List<String> gains, List<String> losses, List<String> wants) {

  /** A smaller difference is one of rounding, not one that a client feels; in per cent. */
  private static final int FELT_SHARE = 5;

  /** A smaller difference is within how fast people are; in seconds. */
  private static final int FELT_SECONDS = 5;

  static Merits of(Compared plan, Compared other, Comparison comparison) {
    Facts here = plan.facts();
    Facts there = other.facts();
    Merits merits = new Merits(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    merits.count(
        there.unmetWishes() - here.unmetWishes(),
        "unmet wish fewer",
        "unmet wishes fewer",
        "unmet wish more",
        "unmet wishes more");
    merits.points(plan, other, comparison);
    int share = percent(here) - percent(there);
    if (Math.abs(share) >= FELT_SHARE) {
      merits.add(
          share > 0,
          "equipment in " + percent(here) + " % of the work, not " + percent(there) + " %");
      merits.want(share > 0, "want to lift for more of the session");
    }
    merits.handling(here, there);
    int trips = there.floorTrips() - here.floorTrips();
    merits.count(
        trips,
        "trip to or from the floor fewer",
        "trips to or from the floor fewer",
        "trip to or from the floor more",
        "trips to or from the floor more");
    merits.want(trips > 0, "would rather not go down and up again");
    return merits;
  }

  private void points(Compared plan, Compared other, Comparison comparison) {
    Facts here = plan.facts();
    Facts there = other.facts();
    if (comparison.sameProblem() || comparison.sameShape()) {
      int more = here.points() - there.points();
      String over =
          comparison.sameProblem()
              ? ""
              : here.minutes() == there.minutes()
                  ? " over the same " + English.count(here.minutes(), "minute")
                  : " over as many supersets";
      count(
          more,
          "point more" + over,
          "points more" + over,
          "point less" + over,
          "points less" + over);
      return;
    }
    BigDecimal more =
        rounded(here.pointsPerSuperset()).subtract(rounded(there.pointsPerSuperset()));
    if (more.signum() != 0) {
      String number = more.abs().stripTrailingZeros().toPlainString();
      add(
          more.signum() > 0,
          number
              + (number.equals("1") ? " point" : " points")
              + " a superset "
              + (more.signum() > 0 ? "more" : "less"));
    }
  }

  private void handling(Facts here, Facts there) {
    int fetched = there.fetched() - here.fetched();
    int handled = there.handled() - here.handled();
    int seconds = there.changeover() - here.changeover();
    count(
        fetched,
        "thing fewer to fetch",
        "things fewer to fetch",
        "more thing to fetch",
        "more things to fetch");
    count(
        handled,
        "change of equipment fewer",
        "changes of equipment fewer",
        "more change of equipment",
        "more changes of equipment");
    if (Math.abs(seconds) >= FELT_SECONDS) {
      add(
          seconds > 0,
          Math.abs(seconds) + " s " + (seconds > 0 ? "less" : "more") + " changing over");
    }
    want(fetched > 0, "want less to fetch");
    want(handled > 0 || handled == 0 && seconds >= FELT_SECONDS, "want to change over less");
  }

  private void count(int more, String gain, String gains, String loss, String losses) {
    if (more != 0) {
      int number = Math.abs(more);
      add(
          more > 0,
          number + " " + (more > 0 ? number == 1 ? gain : gains : number == 1 ? loss : losses));
    }
  }

  private void add(boolean better, String clause) {
    (better ? gains : losses).add(clause);
  }

  private void want(boolean holds, String clause) {
    if (holds) {
      wants.add(clause);
    }
  }

  static int percent(Facts facts) {
    return (int) Math.round(100 * facts.loadedShare());
  }

  static BigDecimal rounded(double number) {
    return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP);
  }
}
