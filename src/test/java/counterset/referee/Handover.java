package counterset.referee;

import counterset.model.Position;
import counterset.score.ChangeoverSeconds;
import counterset.score.EquipmentChange;

/** From one exercise to the next: the seconds, the items and the points that they cost. */
final class Handover {

  /** The exercises are of one superset and round. */
  static final int NO_REST = -1;

  private final Choices choices;
  private final int perItem;
  private final int perPoint;

  Handover(Choices choices, Weights weights) {
    this.choices = choices;
    this.perItem = weights.of(EquipmentChange.class);
    this.perPoint = weights.of(ChangeoverSeconds.class);
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

  /**
   * What it costs, as a number of points that is at least 0.
   *
   * @param seconds that it takes
   * @param room the seconds of the rest that it happens in; {@link #NO_REST} inside a superset
   */
  int cost(long inUse, long needs, long keeps, int seconds, int room) {
    int items = choices.carried(inUse & ~keeps, needs & ~inUse);
    return items * perItem + (room == NO_REST ? inside(seconds) : across(seconds, room)) * perPoint;
  }

  /** 1.8 a second beyond 3, rounded half up. */
  private static int inside(int seconds) {
    return seconds <= 3 ? 0 : (18 * (seconds - 3) + 5) / 10;
  }

  /** 0.3 a second beyond half of the rest, rounded half up. */
  private static int across(int seconds, int room) {
    int halfSeconds = 2 * seconds - room;
    return halfSeconds <= 0 ? 0 : (15 * halfSeconds + 50) / 100;
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
