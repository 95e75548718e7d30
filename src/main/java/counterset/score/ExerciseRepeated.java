package counterset.score;

/** No exercise, nor a variant of it, comes twice; a unit is a pair. */
public final class ExerciseRepeated extends AlikeConstraint {

  ExerciseRepeated() {
    super(
        "exerciseRepeated",
        Level.HARD,
        1,
        "No exercise, nor a variant of it, comes twice.",
        "per repeated pair");
  }

  @Override
  public int key(Candidate exercise) {
    return exercise.root();
  }
}
