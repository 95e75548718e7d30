package counterset.report.text;

/** How much a run sheet tells. */
public enum Detail {
  /** What one needs to lead the session, on half the paper. */
  BRIEF,
  /** All cues, what to watch for, what is said in each rest, and the parts of the score. */
  FULL;

  boolean isFull() {
    return this == FULL;
  }
}
