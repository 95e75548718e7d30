package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.SupersetKind;
import java.util.List;

/**
 * A quarter to a half of the supersets are one-sided, rounded in favour of the session; a unit is a
 * superset outside that.
 */
public final class OneSidedShare extends CountConstraint {

  OneSidedShare() {
    super(
        "oneSidedShare",
        points(6),
        "A quarter to a half of the supersets are one-sided.",
        "per superset outside that",
        "One-sided share outside a quarter to a half");
  }

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
    int least = facts.supersets() / 4;
    int most = (facts.supersets() + 1) / 2;
    return Math.max(0, Math.max(least - oneSided, oneSided - most));
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return "by " + English.count(amount, "superset");
  }

  @Override
  public String said(Told told) {
    return "one-sided supersets are not a quarter to a half of the session, by "
        + English.count(told.amount(), "superset");
  }

  @Override
  public String total(Total total) {
    String away = total.better() ? "nearer to" : "further from";
    return "one-sided supersets are " + away + " a quarter to a half of the session";
  }
}
