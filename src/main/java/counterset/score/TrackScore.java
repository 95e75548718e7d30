package counterset.score;

/**
 * What the tracks of a session add to its {@link SessionScore}. It keeps scratch arrays, so an
 * instance serves one thread.
 */
public final class TrackScore {

  private final TrackWalk walk;
  private final Sums sums = new Sums();

  public TrackScore(SessionFacts facts) {
    walk = new TrackWalk(facts);
  }

  /**
   * Works out what all tracks add.
   *
   * @param places the exercises by place, null where there is none
   * @param standIns by track and place, null where there is none
   */
  public void compute(Candidate[] places, Candidate[] standIns) {
    sums.clear();
    walk.walk(places, standIns, sums);
  }

  /** Hard points of the tracks last computed, at most 0. */
  public int hard() {
    return sums.hard();
  }

  /** Medium points of the tracks last computed, at most 0. */
  public int medium() {
    return sums.medium();
  }

  /** Soft points of the tracks last computed, at most 0. */
  public int soft() {
    return sums.soft();
  }
}
