package counterset.model;

import java.util.Arrays;
import java.util.Optional;

/**
 * Something with a stable {@code lower-kebab-case} id, the word that files and commands use for it.
 */
public interface Identified {

  /** The id, never empty. */
  String id();

  /** The constant of an enum that has the given id, if there is one. */
  static <E extends Enum<E> & Identified> Optional<E> find(Class<E> type, String id) {
    return Arrays.stream(type.getEnumConstants())
        .filter(value -> value.id().equals(id))
        .findFirst();
  }
}
