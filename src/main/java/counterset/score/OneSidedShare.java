package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.SupersetKind;
import java.util.List;

/**
 * 15 to 50 of 100 supersets are one-sided, for the legs alone 40 to 68, rounded in favour of the
 * session; a unit is a superset outside that.
 */
public final class OneSidedShare extends CountConstraint {

  OneSidedShare() {
    super(
        "oneSidedShare",
        points(6),
        "Some of the supersets are one-sided, of those for the legs more.",
        "per superset outside 15 to 50 of 100, or 40 to 68 for the legs alone",
        "Too few or too many one-sided supersets");
  }

  private static final int LEAST = 15;
  private static final int MOST = 50;
  private static final int LEAST_FOR_LEGS = 40;
  private static final int MOST_FOR_LEGS = 68;

  @Override
  public Source source() {
    return Source.SUPERSETS;
  }

  @Override
  public int ofSuperset(Group superset) {
    return superset.kind() == SupersetKind.UNILATERAL ? 1 : 0;
  }

  @Override
  public int measure(SessionFacts facts, int tag, int oneSided) {
    if (facts.perSuperset() != 2) {
      return 0;
    }
    boolean legs = facts.patterns().isForLegs();
    int least = facts.supersets() * (legs ? LEAST_FOR_LEGS : LEAST) / 100;
    int most = (facts.supersets() * (legs ? MOST_FOR_LEGS : MOST) + 99) / 100;
    return Math.max(0, Math.max(least - oneSided, oneSided - most));
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return "by " + English.count(amount, "superset");
  }

  @Override
  public String said(Told told) {
    return "there are too few or too many one-sided supersets, by "
        + English.count(told.amount(), "superset");
  }

  @Override
  public String total(Total total) {
    String away = total.better() ? "nearer to" : "further from";
    return "one-sided supersets are " + away + " their share of the session";
  }
}
