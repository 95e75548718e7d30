package counterset.bench;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A catalogue made larger by copies of its exercises under other names. */
final class Copies {

  private Copies() {}

  /**
   * A catalogue so many times as large. The copies are exercises and families of their own: a
   * session may hold one beside its original.
   */
  static Catalogue times(Catalogue catalogue, int times) {
    List<Exercise> exercises = new ArrayList<>(catalogue.exercises().values());
    for (int copy = 2; copy <= times; copy++) {
      for (Exercise exercise : catalogue.exercises().values()) {
        exercises.add(renamed(exercise, "-" + copy));
      }
    }
    return Catalogue.of(
        List.copyOf(catalogue.muscles().values()),
        List.copyOf(catalogue.equipment().values()),
        List.copyOf(catalogue.limitations().values()),
        exercises);
  }

  private static Exercise renamed(Exercise exercise, String suffix) {
    Optional<String> base = exercise.variantOf().map(id -> id + suffix);
    return exercise.toBuilder()
        .id(exercise.id() + suffix)
        .name(exercise.name() + suffix)
        .names(List.of())
        .family(exercise.family() + suffix)
        .variantOf(base)
        .build();
  }
}
