package counterset.score;

import static counterset.score.Weight.points;

import java.util.Optional;

/** What was done lately rests; a unit is a point of {@link Candidate#recentPoints}. */
public final class UsedRecently extends PlaceConstraint {

  UsedRecently() {
    super(
        "usedRecently",
        points(1),
        "What was done lately rests.",
        "20 for yesterday, falling to 0 at 14 days",
        "Done lately");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.recentPoints();
  }

  @Override
  String does(Told told) {
    return "was done lately";
  }

  @Override
  public String total(Total total) {
    return total.less() + " of it was done lately";
  }

  @Override
  public Optional<String> became(String now, String before, boolean better) {
    String when = better ? "longer ago" : "more lately";
    return Optional.of(now + " was done " + when + " than " + before);
  }
}
