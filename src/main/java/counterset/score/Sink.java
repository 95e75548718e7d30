package counterset.score;

/** Takes in the matches of the constraints, one call a match. */
interface Sink {

  /** A place that a match does not have. */
  int NOWHERE = -1;

  /** The session itself, as those do it whom everything suits. */
  int MAIN = -1;

  /**
   * A match.
   *
   * @param amount units of the constraint, at least 1
   * @param first the index of the place it happens at, or {@link #NOWHERE}
   * @param second the index of the other place, or {@link #NOWHERE}
   * @param subject the id of what it is about where no place tells, else null
   * @param track the track whose followers it concerns, or {@link #MAIN}
   */
  void match(Rule rule, int amount, int first, int second, String subject, int track);
}
