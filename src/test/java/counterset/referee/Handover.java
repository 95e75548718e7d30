package counterset.referee;

import counterset.model.Position;
import counterset.score.ChangeoverSeconds;
import counterset.score.EquipmentChange;

/** From one exercise to the next: the seconds, the items and the points that they cost. */
final class Handover {

  private final Choices choices;
  private final int perItem;
  private final int perSecond;

  Handover(Choices choices, Weights weights) {
    this.choices = choices;
    this.perItem = weights.of(EquipmentChange.class);
    this.perSecond = weights.of(ChangeoverSeconds.class);
  }

  /**
   * The seconds of a change-over.
   *
   * @param inUse before it
   */
  int seconds(long inUse, Position from, long needs, long keeps, Position to) {
    return body(from, to)
        + choices.takeOffSeconds(inUse & ~keeps)
        + choices.putOnSeconds(needs & ~inUse);
  }

  /** What it costs, as a number of points that is at least 0. */
  int cost(long inUse, long needs, long keeps, int seconds) {
    int items = Long.bitCount(inUse & ~keeps) + Long.bitCount(needs & ~inUse);
    return items * perItem + seconds * perSecond;
  }

  private static int body(Position from, Position to) {
    if (from == to) {
      return 0;
    }
    if (from.isFloor() && to.isFloor()) {
      return 3;
    }
    return from.isFloor() || to.isFloor() ? 6 : 5;
  }
}
