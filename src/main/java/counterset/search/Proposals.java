package counterset.search;

import counterset.score.Change;

/** Draws the kind of a change. The shares of the kinds were chosen by measuring. */
final class Proposals {

  /** The share of the changes that undo others, near a given session. */
  private static final int RETURN_PERCENT = 15;

  private final Refills refills;
  private final Reorders reorders;
  private final Dice dice;
  // Null where there is nothing to return to.
  private final Returns returns;

  Proposals(Board board, Pool pool, Dice dice) {
    this(board, pool, dice, null);
  }

  /**
   * Changes inside a fence, or near it.
   *
   * @param fence null if there is none
   */
  Proposals(Board board, Pool pool, Dice dice, Fence fence) {
    this.refills = new Refills(board, pool, dice);
    this.reorders = new Reorders(board, dice);
    this.dice = dice;
    this.returns =
        fence == null
            ? null
            : fence.home().map(home -> new Returns(board, home, dice)).orElse(null);
  }

  /** Makes up a change; false if this one cannot be made. */
  boolean next(Change change) {
    if (returns != null && dice.nextInt(100) < RETURN_PERCENT) {
      change.clear(false);
      return returns.oneSuperset(change);
    }
    int kind = dice.nextInt(100);
    if (kind < 66) {
      change.clear(false);
      return refill(change, kind);
    }
    change.clear(true);
    return reorder(change, kind);
  }

  private boolean refill(Change change, int kind) {
    if (kind < 40) {
      return refills.onePlace(change);
    } else if (kind < 58) {
      return refills.oneSuperset(change);
    }
    return refills.runOfOneKind(change);
  }

  private boolean reorder(Change change, int kind) {
    if (kind < 80) {
      return reorders.swapPlaces(change);
    } else if (kind < 88) {
      return reorders.swapSupersets(change);
    } else if (kind < 95) {
      return reorders.reverseRun(change);
    }
    return reorders.moveRun(change);
  }
}
