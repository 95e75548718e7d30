package counterset.score;

/**
 * Sees every two exercises of a session in their order. What two cost depends on a class of each
 * alone, so that a search needs to count classes only.
 */
public abstract class OrderConstraint extends PlanConstraint {

  OrderConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** How many classes there are. */
  public abstract int classes();

  /** The class of an exercise, from 0. */
  public abstract int classOf(Candidate exercise);

  /** Units for an exercise of a class before one of another, at least 0. */
  public abstract int measure(int earlier, int later);
}
