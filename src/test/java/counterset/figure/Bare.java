package counterset.figure;

import counterset.fixture.ExerciseBuilder;
import counterset.model.Exercise;

/** An exercise that needs nothing. */
final class Bare {

  private Bare() {}

  static Exercise exercise() {
    return ExerciseBuilder.exercise("bare").build();
  }
}
