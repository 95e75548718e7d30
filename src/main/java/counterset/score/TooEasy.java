package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;
import java.util.Optional;

/**
 * Work without load matches the client's level; a unit is a step below it. A load can be chosen, so
 * that lifts count for the skilled only.
 */
public final class TooEasy extends PlaceConstraint {

  TooEasy() {
    super(
        "tooEasy",
        points(2),
        "Work matches the client's level.",
        "per step below it; what is lifted for level 3 only",
        "Below the client's level");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.stepsBelow();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "step");
  }

  @Override
  String does(Told told) {
    return "is below the client's level";
  }

  @Override
  public String total(Total total) {
    return "the work is " + degree(total.better());
  }

  @Override
  public Optional<String> became(String now, String before, boolean better) {
    return Optional.of(now + " is " + degree(better) + " than " + before);
  }

  private static String degree(boolean better) {
    return (better ? "nearer to" : "further below") + " the client's level";
  }
}
