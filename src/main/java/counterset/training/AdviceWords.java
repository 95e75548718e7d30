package counterset.training;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Load advice as a coach would say it. */
final class AdviceWords {

  private final List<Lifted> record;

  AdviceWords(List<Lifted> record) {
    this.record = record;
  }

  String never() {
    return "no advice, no load is logged yet";
  }

  String longAgo(long days) {
    return before()
        + ": no advice, that was "
        + days
        + " days ago; start lighter and build up again";
  }

  String once() {
    return before() + ": no advice, the 2-for-2 rule needs two sessions";
  }

  String outOfRange() {
    return before()
        + ": no advice, the formulas hold for 1 to "
        + OneRepMax.MOST_REPS
        + " repetitions; judge the load by a set that is hard by then";
  }

  String noMasses() {
    return before()
        + ": no advice, the masses that the client owns are not known; name them, such as"
        + " \"dumbbells 6 and 10 kg\"";
  }

  String notOwned() {
    return before() + ": no advice, that mass is not among those that the client owns";
  }

  String notYet() {
    return before()
        + ": stay with "
        + kg(last().kg())
        + " until the last set reaches "
        + TwoForTwo.enough(TwoForTwo.GOAL)
        + " in two sessions running (2-for-2 rule, goal "
        + TwoForTwo.GOAL
        + ")";
  }

  String heaviest() {
    return before()
        + ": ready for more by the 2-for-2 rule, but "
        + kg(last().kg())
        + " is the heaviest there is; slow each repetition down";
  }

  String tooFar(double next, OneRepMax max) {
    return before()
        + ": stay with "
        + kg(last().kg())
        + "; "
        + kg(next)
        + " is too far a jump, about "
        + expected(next, max)
        + " by Epley and Brzycki ("
        + LoadAdviser.FEWEST_REPS
        + " or more wanted)";
  }

  String up(double next, OneRepMax max) {
    return before()
        + ": try "
        + kg(next)
        + " next, for about "
        + expected(next, max)
        + " (2-for-2 rule; Epley and Brzycki: once "
        + range(max)
        + ")";
  }

  private String before() {
    String reps = last().reps().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return kg(last().kg()) + " last time for " + reps;
  }

  private Lifted last() {
    return record.get(record.size() - 1);
  }

  private static String expected(double next, OneRepMax max) {
    int few = max.fewestReps(next);
    int most = max.mostReps(next);
    return few == most ? few + " repetitions" : few + " to " + most + " repetitions";
  }

  private static String range(OneRepMax max) {
    String low = oneDecimal(max.low());
    String high = oneDecimal(max.high());
    return (low.equals(high) ? low : low + " to " + high) + " kg";
  }

  private static String oneDecimal(double number) {
    return BigDecimal.valueOf(number).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  private static String kg(double mass) {
    return BigDecimal.valueOf(mass).stripTrailingZeros().toPlainString() + " kg";
  }
}
