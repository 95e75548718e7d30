package counterset.score;

/** Sees one exercise at its place. */
public abstract class PlaceConstraint extends Constraint {

  PlaceConstraint(String id, Level level, int weight, String sentence, String unit) {
    super(id, level, weight, sentence, unit);
  }

  /** Units for an exercise, whatever stands around it; at least 0. */
  public abstract int measure(Candidate exercise);

  /**
   * Whether the second side of a one-sided exercise counts again. Else an exercise counts once in a
   * superset.
   */
  public boolean isPerPosition() {
    return false;
  }
}
