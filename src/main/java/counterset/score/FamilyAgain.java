package counterset.score;

/** Exercises feel different from each other; a unit is a pair of one family. */
public final class FamilyAgain extends AlikeConstraint {

  FamilyAgain() {
    super(
        "familyAgain",
        Level.SOFT,
        10,
        "Exercises feel different from each other.",
        "per pair of one family");
  }

  @Override
  public int key(Candidate exercise) {
    return exercise.family();
  }
}
