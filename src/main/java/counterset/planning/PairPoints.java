package counterset.planning;

import counterset.model.Pairing;
import counterset.model.SupersetKind;

/** What it is worth how two exercises follow each other. */
public final class PairPoints {

  private static final int STRICT = 20;
  private static final int OPPOSITE_REGION = 12;
  private static final int BOTH_SIDES = 10;
  private static final int SAME_MUSCLE_INSIDE = 15;
  private static final int SAME_MUSCLE_ACROSS = 6;

  private PairPoints() {}

  /** The reward for a superset of a kind, at least 0. */
  public static int of(Pairing pairing, SupersetKind kind) {
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

  /** The cost of neighbours that train the same muscle first. */
  public static int sameMuscle(boolean insideSuperset) {
    return insideSuperset ? SAME_MUSCLE_INSIDE : SAME_MUSCLE_ACROSS;
  }
}
