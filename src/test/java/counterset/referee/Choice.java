package counterset.referee;

import counterset.model.Exercise;
import counterset.model.Opposites;

/**
 * An exercise that may stand in a place.
 *
 * @param index its number among the choices, from 0
 * @param needs the items that it needs, as bits
 * @param keeps the items that stay in use when it begins: those needed, and worn ones it allows
 * @param muscles its primary muscle groups, as bits
 * @param joints the joints that it asks 2 or more of, as bits
 */
record Choice(
    int index,
    Exercise exercise,
    long needs,
    long keeps,
    long muscles,
    long joints,
    Opposites.Profile profile) {

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
