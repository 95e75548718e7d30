package counterset.typed;

import counterset.model.Part;
import java.util.List;
import java.util.Set;

/**
 * A name to be found, and what else is known of the exercise.
 *
 * @param words of the name, in order
 * @param part of the session where it stands
 * @param oneSided whether sides were named
 * @param loaded whether a mass was named
 * @param known equipment that is at hand, by id
 * @param limited whether there is no other equipment
 * @param worn what is strapped on by now, by id
 */
record Wanted(
    List<Word> words,
    Part part,
    boolean oneSided,
    boolean loaded,
    Set<String> known,
    boolean limited,
    Set<String> worn) {

  Wanted {
    words = List.copyOf(words);
    known = Set.copyOf(known);
    worn = Set.copyOf(worn);
  }

  Wanted with(List<Word> others) {
    return new Wanted(others, part, oneSided, loaded, known, limited, worn);
  }

  Wanted knowing(Set<String> equipment) {
    return new Wanted(words, part, oneSided, loaded, equipment, limited, worn);
  }

  /** Whether equipment was named with the exercise. */
  boolean mentions(String equipment) {
    return words.stream().anyMatch(word -> word.equipment().contains(equipment));
  }
}
