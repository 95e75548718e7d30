package counterset.search;

import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.OptionalInt;

/**
 * How long a search may take.
 *
 * @param seconds a time limit for those who want one; the result then depends on the machine
 */
public record Limit(Effort effort, OptionalInt seconds) {

  private static final long MILLIS = 1000;

  /** A limit counted in moves. */
  public static Limit of(Effort effort) {
    return new Limit(effort, OptionalInt.empty());
  }

  /** The limit of each of several searches, where a time limit is shared out among them. */
  Limit part(int parts) {
    return seconds.isPresent()
        ? new Limit(effort, OptionalInt.of(Math.max(1, seconds.getAsInt() / parts)))
        : this;
  }

  /** With a time limit each core has one start, so that the limit holds for the whole. */
  int starts() {
    return seconds.isPresent() ? Runtime.getRuntime().availableProcessors() : effort.starts();
  }

  /**
   * When one of several phases of a search ends.
   *
   * @param done the shares of the search that are done by then
   * @param own its own share
   * @param all the shares of all phases
   * @param supersets of all sessions that can change
   */
  TerminationConfig end(int done, int own, int all, int supersets) {
    TerminationConfig end = new TerminationConfig();
    return seconds.isPresent()
        ? end.withMillisecondsSpentLimit(Math.max(1, MILLIS * seconds.getAsInt() * own / all))
        : end.withMoveCountLimit(effort.moves(supersets) * done / all);
  }

  /** Whether the number of moves is the same whenever this is asked for. */
  boolean isCounted() {
    return seconds.isEmpty();
  }

  String name() {
    return seconds.isPresent() ? seconds.getAsInt() + " seconds" : effort.id();
  }
}
