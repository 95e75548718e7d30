package counterset.score;

import counterset.model.Pairing;
import counterset.model.SupersetKind;

/** Supersets pair what the coach asked to pair; a unit is a point. */
public final class OpposingPair extends SupersetConstraint {

  OpposingPair() {
    super(
        "opposingPair",
        Level.SOFT,
        1,
        "Supersets pair what the coach asked to pair.",
        "20 for antagonists (or one muscle twice, if that is asked for), 12 for opposite regions, 10 for one exercise on both sides");
  }

  private static final int STRICT = 20;
  private static final int OPPOSITE_REGION = 12;
  private static final int BOTH_SIDES = 10;

  @Override
  void measure(Group superset, Matches matches) {
    if (superset.kind() != null) {
      int points = points(superset.pairing(), superset.kind());
      if (points > 0) {
        matches.match(points, 0, superset.size() - 1);
      }
    }
  }

  /** What a superset of a kind is worth, in units, at least 0. */
  public int points(Pairing pairing, SupersetKind kind) {
    if (pairing == Pairing.FREE) {
      return 0;
    }
    return switch (kind) {
      case UNILATERAL -> BOTH_SIDES;
      case AGONIST_ANTAGONIST -> pairing == Pairing.OPPOSING ? STRICT : 0;
      case OPPOSITE_REGION -> pairing == Pairing.OPPOSING ? OPPOSITE_REGION : 0;
      case COMPOUND -> pairing == Pairing.COMPOUND ? STRICT : 0;
      case MIXED -> 0;
    };
  }

  @Override
  public boolean isReward() {
    return true;
  }
}
