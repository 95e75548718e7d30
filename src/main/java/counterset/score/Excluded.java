package counterset.score;

import static counterset.score.Weight.rule;

/** Nothing that the coach excluded is used; a unit is an exercise. */
public final class Excluded extends PlaceConstraint {

  Excluded() {
    super(
        "excluded",
        rule("Maybe swap it, or exclude it no longer."),
        "Nothing that the coach excluded is used.",
        "per exercise",
        "Excluded and still used");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.excluded() ? 1 : 0;
  }

  @Override
  String does(Told told) {
    return "is excluded";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " excluded exercises are used";
  }
}
