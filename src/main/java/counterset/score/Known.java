package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.Exercise;

/**
 * Staples of the trade are preferred, and among them those that most of its lists name; a unit is a
 * step towards what hardly anybody knows.
 */
public final class Known extends PlaceConstraint {

  private static final int NO_STAPLE = 5;

  /** Lists that name what everybody knows, and what is well known. */
  private static final int MANY = 7;

  private static final int SOME = 4;

  Known() {
    super(
        "known",
        points(1),
        "Staples of the trade come before lesser-known exercises.",
        "5 per position with an exercise that is no staple, up to 2 with a staple that few lists of the trade name",
        "Exercises that are no staples");
  }

  @Override
  public int measure(Candidate exercise) {
    return switch (exercise.merit().standing()) {
      case Exercise.KNOWN -> NO_STAPLE;
      case Exercise.STAPLE -> rarity(exercise.exercise().standingSources().size());
      default -> 0;
    };
  }

  private static int rarity(int lists) {
    return lists >= MANY ? 0 : lists >= SOME ? 1 : 2;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    boolean staple = told.match().amount() < NO_STAPLE;
    return staple ? "is not the best-known of staples" : "is no staple";
  }

  @Override
  public String total(Total total) {
    return "the exercises are " + (total.better() ? "better" : "less well") + " known";
  }
}
