package counterset.referee;

/**
 * How long a judgement may take.
 *
 * @param seconds for each of its two passes, more than 0; with {@code repeatable} the solver's own
 *     deterministic seconds, which do not depend on the machine
 * @param workers threads, at least 1
 */
public record Limits(double seconds, int workers, boolean repeatable) {

  public Limits {
    if (seconds <= 0 || workers < 1) {
      throw new IllegalArgumentException(
          "Limits need seconds (" + seconds + ") above 0 and at least 1 worker (" + workers + ").");
    }
  }
}
