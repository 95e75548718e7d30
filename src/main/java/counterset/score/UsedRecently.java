package counterset.score;

/**
 * What was done lately rests; a unit is a point of {@link counterset.score.Candidate#recentPoints}.
 */
public final class UsedRecently extends PlaceConstraint {

  UsedRecently() {
    super(
        "usedRecently",
        Level.SOFT,
        1,
        "What was done lately rests.",
        "20 for yesterday, falling to 0 at 14 days");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.recentPoints();
  }
}
