package counterset.score;

import static counterset.score.Weight.rule;

/** Nothing is above the client's level; a unit is an exercise. */
public final class AboveLevel extends PlaceConstraint {

  AboveLevel() {
    super(
        "aboveLevel",
        rule("Maybe swap it, or raise the level."),
        "Nothing is above the client's level.",
        "per exercise",
        "Above the client's level");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.aboveLevel() ? 1 : 0;
  }

  @Override
  String does(Told told) {
    return "is above the client's level";
  }

  @Override
  public String said(Told told) {
    String level =
        told.work().stream()
            .findFirst()
            .map(exercise -> " is level " + exercise.level() + ",")
            .orElse(" is");
    return told.exercise() + level + " above level " + told.own().problem().level();
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises are above the client's level";
  }
}
