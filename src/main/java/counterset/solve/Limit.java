package counterset.solve;

import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.OptionalInt;

/**
 * How long a search may take.
 *
 * @param seconds a time limit for those who want one; the result then depends on the machine
 */
public record Limit(Effort effort, OptionalInt seconds) {

  /** A limit counted in walks. */
  public static Limit of(Effort effort) {
    return new Limit(effort, OptionalInt.empty());
  }

  /** The limit of each of several searches, where a time limit is shared out among them. */
  Limit part(int parts) {
    return seconds.isPresent()
        ? new Limit(effort, OptionalInt.of(Math.max(1, seconds.getAsInt() / parts)))
        : this;
  }

  TerminationConfig termination() {
    return seconds.isPresent()
        ? new TerminationConfig().withSecondsSpentLimit((long) seconds.getAsInt())
        : SearchConfig.walks(effort.walks());
  }

  /** With a time limit each core has one start, so that the limit holds for the whole. */
  int starts() {
    return seconds.isPresent() ? Runtime.getRuntime().availableProcessors() : effort.starts();
  }

  String name() {
    return seconds.isPresent() ? seconds.getAsInt() + " seconds" : effort.id();
  }

  long tries(int supersets) {
    return seconds.isPresent() ? 0 : effort.tries(supersets);
  }
}
