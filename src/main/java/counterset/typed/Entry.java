package counterset.typed;

import counterset.model.Exercise;
import java.util.List;
import java.util.Set;

/**
 * One name that an exercise may be called by.
 *
 * @param keys of the words of the name, small words left out
 * @param must equipment that has to be named besides, because the name is that of a variant without
 *     it
 */
record Entry(Exercise exercise, List<String> keys, Set<String> must) {

  Entry {
    keys = List.copyOf(keys);
    must = Set.copyOf(must);
  }
}
