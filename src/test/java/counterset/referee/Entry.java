package counterset.referee;

import counterset.model.Position;

/**
 * What a superset begins with.
 *
 * @param inUse the items in use once its first exercise has begun
 * @param position null for an empty superset
 * @param carried what an empty superset passes on; null for one with an exercise
 */
record Entry(
    long needs, long keeps, long inUse, Position position, Neighbour neighbour, Exit carried) {

  static Entry of(Choice first, long inUse) {
    return new Entry(
        first.needs(), first.keeps(), inUse, first.exercise().position(), first.neighbour(), null);
  }

  static Entry empty(Exit carried) {
    return new Entry(0, 0, 0, null, Neighbour.NONE, carried);
  }

  boolean isEmpty() {
    return carried != null;
  }

  /** Whether a session can go on here from there, the room of the rest apart. */
  boolean follows(Exit exit) {
    if (isEmpty()) {
      return carried.equals(exit);
    }
    return (exit.inUse() & keeps | needs) == inUse;
  }
}
