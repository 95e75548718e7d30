package counterset.score;

import static counterset.score.Weight.rule;

/** No exercise, nor a variant of it, comes twice; a unit is a pair. */
public final class ExerciseRepeated extends AlikeConstraint {

  ExerciseRepeated() {
    super(
        "exerciseRepeated",
        rule("Maybe swap one of them."),
        "No exercise, nor a variant of it, comes twice.",
        "per repeated pair",
        "Repeated exercises");
  }

  @Override
  public int key(Candidate exercise) {
    return exercise.root();
  }

  @Override
  public String said(Told told) {
    return "the same exercise twice: " + told.exercises();
  }

  @Override
  public String came(Told told) {
    return told.exercise() + " comes twice";
  }

  @Override
  public String went(Told told) {
    return told.exercise() + " no longer comes twice";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises come twice";
  }
}
