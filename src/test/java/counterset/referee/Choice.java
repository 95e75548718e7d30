package counterset.referee;

import counterset.model.Exercise;
import counterset.model.Opposites;
import counterset.score.Merit;

/**
 * An exercise that may stand in a place.
 *
 * @param index its number among the choices, from 0
 * @param needs the items that it needs, as bits
 * @param keeps the items that stay in use when it begins: those needed, and worn ones it allows
 * @param muscles its primary muscle groups, as bits
 * @param neighbour what it has in common with others across a rest
 * @param merit what it is worth to the client by itself
 * @param pattern the id of its movement pattern
 */
record Choice(
    int index,
    Exercise exercise,
    long needs,
    long keeps,
    long muscles,
    Opposites.Profile profile,
    Neighbour neighbour,
    Merit merit,
    String pattern) {

  /** How many places it takes. */
  int positions() {
    return oneSided() ? 2 : 1;
  }

  boolean oneSided() {
    return exercise.isUnilateral();
  }

  boolean onFloor() {
    return exercise.position().isFloor();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Choice choice && choice.index == index;
  }

  @Override
  public int hashCode() {
    return index;
  }
}
