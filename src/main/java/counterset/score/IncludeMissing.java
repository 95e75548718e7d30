package counterset.score;

/** Every exercise that the coach asked for is there; a unit is an exercise. */
public final class IncludeMissing extends CountConstraint {

  IncludeMissing() {
    super(
        "includeMissing",
        Level.MEDIUM,
        1,
        "Every exercise that the coach asked for is there.",
        "per missing exercise");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().include().size();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    if (exercise.included() != 0) {
      tags.add(Long.numberOfTrailingZeros(exercise.included()), 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int wish, int exercises) {
    return exercises == 0 ? 1 : 0;
  }

  @Override
  public String subject(SessionFacts facts, int wish) {
    return facts.problem().include().stream().skip(wish).findFirst().orElseThrow();
  }
}
