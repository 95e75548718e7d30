package counterset.score;

import static counterset.score.Weight.rule;

/** Nothing that a limitation forbids is done; a unit is an exercise and limitation. */
public final class UnsafeForClient extends PlaceConstraint {

  UnsafeForClient() {
    super(
        "unsafeForClient",
        rule("Swap it."),
        "Nothing that a limitation of the session forbids is done.",
        "per exercise and limitation",
        "Against a limitation");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.unsafe();
  }

  @Override
  String does(Told told) {
    return "goes against " + told.broken(told.plan().problem().limitations());
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises go against a limitation";
  }
}
