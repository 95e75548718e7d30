package counterset.model;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Immutable copies that keep their order: {@code Set.copyOf} iterates differently in every run,
 * which a plan must not.
 */
final class Ordered {

  private Ordered() {}

  static <T> Set<T> set(Collection<T> values) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(values));
  }

  static <K, V> Map<K, V> map(Map<K, V> values) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }
}
