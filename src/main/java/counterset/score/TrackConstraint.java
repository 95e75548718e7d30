package counterset.score;

/** Sees what the followers of a track do in place of an exercise that does not suit them. */
public abstract class TrackConstraint extends PlanConstraint {

  TrackConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /**
   * Units for one place, at least 0.
   *
   * @param main what stands there and does not suit them
   * @param modification what they do instead; null if nothing that they may do stands beside it
   */
  public int measure(Candidate main, Candidate modification) {
    return 0;
  }

  /** Whether it measures two exercises together; else it measures each place. */
  public boolean isOfPairs() {
    return false;
  }

  /**
   * Units for two exercises that they do, the earlier first, of which one is a modification at
   * least.
   */
  public int measurePair(Candidate earlier, Candidate later) {
    return 0;
  }
}
