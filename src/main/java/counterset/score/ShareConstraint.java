package counterset.score;

/** Sees how all that is counted is shared out among tags. */
public abstract class ShareConstraint extends PlanConstraint {

  ShareConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** How many tags there are. */
  public abstract int tags(SessionFacts facts);

  /** What an exercise counts for, once a superset; at least 0. */
  public abstract int ofExercise(Candidate exercise, int tag);

  /** Tags of one kind are measured alike. */
  public abstract int kind(SessionFacts facts, int tag);

  /**
   * Units for a tag, at least 0.
   *
   * @param count of this tag
   * @param all of all tags together
   */
  public abstract int measure(SessionFacts facts, int tag, int count, int all);

  /** The id of what a tag is about. */
  public abstract String subject(SessionFacts facts, int tag);

  @Override
  public final boolean tellsSubjects() {
    return true;
  }
}
