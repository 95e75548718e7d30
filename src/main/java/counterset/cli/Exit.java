package counterset.cli;

import counterset.review.Checked;
import counterset.review.CheckedWeek;

/** The exit status of a command. */
final class Exit {

  static final int DONE = 0;
  static final int INTERNAL = 1;
  static final int BAD_INPUT = 2;
  static final int INFEASIBLE = 3;

  private Exit() {}

  /** Of the check of a week: that of its worst day, or a broken rule of the week itself. */
  static int of(CheckedWeek week) {
    return week.faults().isEmpty()
        ? week.days().values().stream().mapToInt(Exit::of).max().orElse(DONE)
        : INFEASIBLE;
  }

  /**
   * Of a check: a broken rule counts before a file that says something else than it works out to.
   */
  static int of(Checked checked) {
    if (!checked.plan().canBeLed()) {
      return INFEASIBLE;
    }
    return checked.differences().isEmpty() ? DONE : BAD_INPUT;
  }
}
