package counterset.planning.moves;

import counterset.planning.Change;

/** Draws the kind of a change. The shares of the kinds were chosen by measuring. */
final class Proposals {

  private final Refills refills;
  private final Reorders reorders;
  private final Dice dice;

  Proposals(Lineup lineup, Pool pool, Dice dice) {
    this.refills = new Refills(lineup, pool, dice);
    this.reorders = new Reorders(lineup, dice);
    this.dice = dice;
  }

  /** Makes up a change; false if this one cannot be made. */
  boolean next(Change change) {
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
