package counterset.score;

import static counterset.score.Weight.points;

/** Exercises feel different from each other; a unit is a pair of one family. */
public final class FamilyAgain extends AlikeConstraint {

  FamilyAgain() {
    super(
        "familyAgain",
        points(10),
        "Exercises feel different from each other.",
        "per pair of one family",
        "Exercises that feel alike");
  }

  @Override
  public int key(Candidate exercise) {
    return exercise.family();
  }

  @Override
  public String said(Told told) {
    return isTwice(told)
        ? told.exercise() + " comes twice"
        : told.exercise() + " feels like " + told.last();
  }

  @Override
  public String went(Told told) {
    return isTwice(told)
        ? told.exercise() + " no longer comes twice"
        : told.exercise() + " and " + told.last() + ", which feel alike, are no longer both in";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises feel alike";
  }

  private static boolean isTwice(Told told) {
    return told.work().stream().distinct().count() == 1;
  }
}
