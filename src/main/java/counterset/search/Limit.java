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
   * @param phase from 0
   * @param supersets of all sessions that can change
   */
  TerminationConfig end(int phase, int phases, int supersets) {
    TerminationConfig end = new TerminationConfig();
    return seconds.isPresent()
        ? end.withMillisecondsSpentLimit(MILLIS * seconds.getAsInt() / phases)
        : end.withMoveCountLimit(effort.moves(supersets) * (phase + 1) / phases);
  }

  /**
   * By how much more than it is meant to have a phase must begin with: the solver counts, and
   * cools, from its first move on.
   */
  int early(int phase) {
    return seconds.isPresent() ? 1 : phase + 1;
  }

  /** Whether the number of moves is the same whenever this is asked for. */
  boolean isCounted() {
    return seconds.isEmpty();
  }

  String name() {
    return seconds.isPresent() ? seconds.getAsInt() + " seconds" : effort.id();
  }
}
