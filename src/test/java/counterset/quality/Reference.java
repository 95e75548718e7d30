package counterset.quality;

import java.util.List;

/**
 * A session that was made by hand for a request.
 *
 * @param number from 1, in the order of the file
 * @param ask what was asked, as {@code counterset plan} takes it
 * @param supersets the exercises by superset and position
 * @param why the idea of it
 * @param never what a poor planner would do here
 */
record Reference(
    int number, String ask, List<List<Written>> supersets, String why, List<String> never) {

  /**
   * An exercise as it is written.
   *
   * @param name without its side
   * @param side {@code left}, {@code right}, or empty
   * @param equipment its ids, a wall included; empty for the body alone
   * @param load {@code light}, {@code medium}, {@code heavy}, or empty for the body alone
   */
  record Written(String name, String side, List<String> equipment, String load) {

    boolean isOneSided() {
      return !side.isEmpty();
    }

    @Override
    public String toString() {
      String with = equipment.isEmpty() ? "body" : String.join(" + ", equipment);
      return name + (isOneSided() ? ", each side" : "") + " [" + with + "]";
    }
  }
}
