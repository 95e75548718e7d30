package counterset.referee;

import counterset.model.Position;

/**
 * What a superset leaves behind for the next: all that a change-over and a neighbour depend on.
 * Last exercises that agree in it are one and the same to what follows.
 *
 * @param position null before the first exercise of the session
 */
record Exit(long inUse, Position position, Neighbour neighbour) {

  /** Nothing has been done yet. */
  static final Exit BEFORE_ALL = new Exit(0, null, Neighbour.NONE);

  static Exit of(Choice last, long inUse) {
    return new Exit(inUse, last.exercise().position(), last.neighbour());
  }
}
