package counterset.explain;

import counterset.model.Plan;

/** What the trade calls a superset of so many exercises. */
public final class BlockWords {

  private BlockWords() {}

  /** {@code straight set}, {@code superset} or {@code tri-set}. */
  public static String name(Plan plan) {
    return switch (plan.problem().clock().perSuperset()) {
      case 1 -> "straight set";
      case 2 -> "superset";
      default -> "tri-set";
    };
  }
}
