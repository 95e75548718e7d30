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
    return new Exercise(
        exercise.id() + suffix,
        exercise.name() + suffix,
        List.of(),
        exercise.part(),
        exercise.pattern(),
        exercise.family() + suffix,
        base,
        exercise.multiJoint(),
        exercise.intensity(),
        exercise.level(),
        exercise.primary(),
        exercise.secondary(),
        exercise.sides(),
        exercise.position(),
        exercise.needs(),
        exercise.allowsWorn(),
        exercise.demand(),
        exercise.demandSource(),
        exercise.traits(),
        exercise.met(),
        exercise.seconds(),
        exercise.setup(),
        exercise.cues(),
        exercise.faults(),
        exercise.figure());
  }
}
