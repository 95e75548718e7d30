package counterset.model;

import java.util.Optional;

/**
 * Equipment that an exercise cannot do without.
 *
 * @param count how many, at least 1
 * @param load how heavy, where that matters
 */
public record Need(String equipment, int count, Optional<Load> load) {

  public Need {
    if (count < 1) {
      throw new IllegalArgumentException(
          "The count (" + count + ") of needed equipment (" + equipment + ") must be at least 1.");
    }
  }
}
