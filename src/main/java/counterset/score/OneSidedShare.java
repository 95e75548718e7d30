package counterset.score;

import counterset.model.SupersetKind;

/**
 * A quarter to a half of the supersets are one-sided, rounded in favour of the session; a unit is a
 * superset outside that.
 */
public final class OneSidedShare extends CountConstraint {

  OneSidedShare() {
    super(
        "oneSidedShare",
        Level.SOFT,
        6,
        "A quarter to a half of the supersets are one-sided.",
        "per superset outside that");
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
}
