package counterset.score;

/** Sees the exercises of one superset. */
public abstract class SupersetConstraint extends PlanConstraint {

  SupersetConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** Tells of all its matches in a superset. */
  abstract void measure(Group superset, Matches matches);

  /** Takes in what a superset constraint finds. */
  interface Matches {

    /**
     * A match.
     *
     * @param amount at least 1
     * @param first the position in the superset that it happens at, from 0
     * @param second the other position, or {@link Sink#NOWHERE}
     */
    void match(int amount, int first, int second);
  }
}
