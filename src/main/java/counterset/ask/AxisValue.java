package counterset.ask;

import counterset.model.Problem;
import java.util.List;

/** One value of an axis: what it makes of a problem. */
public final class AxisValue {

  /** What a value says of a problem. */
  @FunctionalInterface
  interface Change {
    void of(VariedProblem problem);
  }

  private final Axis axis;
  private final String phrase;
  private final Change change;

  AxisValue(Axis axis, String phrase, Change change) {
    this.axis = axis;
    this.phrase = phrase;
    this.change = change;
  }

  /** What it is a value of. */
  public Axis axis() {
    return axis;
  }

  /** The value in the words of an ask, such as {@code 15 min}. */
  public String phrase() {
    return phrase;
  }

  /**
   * A problem with these values instead of its own.
   *
   * @param title of the new problem
   * @param warmUpOpen whether the length of the warm-up was assumed by the minutes, and is again
   */
  public static Problem varied(
      Problem problem, List<AxisValue> values, String title, boolean warmUpOpen) {
    VariedProblem varied = new VariedProblem(problem);
    values.forEach(value -> value.change.of(varied));
    if (warmUpOpen) {
      varied.seconds.put(ClockPart.WARM_UP, Assembly.warmUp(varied.minutes));
    }
    return varied.problem(title);
  }
}
