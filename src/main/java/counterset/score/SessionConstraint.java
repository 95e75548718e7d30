package counterset.score;

/** Sees a session as a whole, and is quick about it: a search asks for it at every change. */
public abstract class SessionConstraint extends PlanConstraint {

  SessionConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** Whether there is anything to measure in a problem, whatever its session. */
  abstract boolean matters(SessionFacts facts);

  /**
   * Tells of all its matches; asked only where it matters.
   *
   * @param places the exercises by place, null where there is none
   */
  abstract void measure(SessionFacts facts, Candidate[] places, Matches matches);

  /** Takes in what a session constraint finds. */
  interface Matches {

    /**
     * A match.
     *
     * @param amount at least 1
     * @param place the index of its place, or {@link Sink#NOWHERE}
     * @param subject the id of what it is about, or null
     */
    void match(int amount, int place, String subject);
  }
}
