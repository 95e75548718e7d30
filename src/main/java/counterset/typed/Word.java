package counterset.typed;

import java.util.Set;

/**
 * A word of a name as it was typed.
 *
 * @param equipment the ids of the equipment that it names, or helps to name
 */
record Word(String key, Set<String> equipment, int start, int end) {

  Word {
    equipment = Set.copyOf(equipment);
  }
}
