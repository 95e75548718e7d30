package counterset.intake;

import counterset.ask.AskReader;
import counterset.ask.AskReading;
import counterset.ask.AskTopic;
import counterset.model.Catalogue;
import counterset.model.Intervals;
import counterset.model.Problem;
import counterset.score.RoundsByLength;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What follows from an ask that says nothing of it: rounds where good exercises are too few for the
 * places, and a cool-down where the clock leaves a minute or more.
 *
 * @param echo how the ask was read, with these assumptions
 */
public record Assumptions(Problem problem, List<String> echo) {

  private static final int LEAST_LEFT = 60;
  private static final int STRETCH = 30;
  private static final int LONGEST = 120;

  /**
   * The problem of an ask after something of it was changed, with what the ask is silent about
   * worked out anew.
   *
   * @param ask that the problem was made from
   * @param changed what was changed, which is no longer open
   */
  public static Problem again(
      String ask, Problem problem, Set<AskTopic> changed, Catalogue catalogue) {
    AskReading reading = new AskReader(catalogue).read(ask);
    Set<AskTopic> open = EnumSet.noneOf(AskTopic.class);
    open.addAll(reading.assumed());
    open.removeAll(changed);
    Intervals clock = problem.clock();
    clock = open.contains(AskTopic.ROUNDS) ? clock.withRounds(1) : clock;
    clock = open.contains(AskTopic.COOL_DOWN) ? clock.withCoolDown(0) : clock;
    return of(open, List.of(), problem.toBuilder().clock(clock).build(), catalogue).problem();
  }

  /** What an ask comes to, with what it is silent about. */
  static Assumptions of(AskReading reading, Problem problem, Catalogue catalogue) {
    return of(reading.assumed(), reading.echo(), problem, catalogue);
  }

  private static Assumptions of(
      Set<AskTopic> open, List<String> lines, Problem problem, Catalogue catalogue) {
    Problem now = problem;
    List<String> echo = new ArrayList<>(lines);
    if (open.contains(AskTopic.ROUNDS)) {
      int rounds = RoundsByLength.of(now, catalogue);
      if (rounds > now.clock().rounds()) {
        now = now.toBuilder().clock(now.clock().withRounds(rounds)).build();
        echo.replaceAll(line -> line.replace(" 1 round", " " + rounds + " rounds"));
        echo.add("rounds: since there are too few good exercises for all places otherwise");
      }
    }
    int left = left(now);
    if (open.contains(AskTopic.COOL_DOWN) && left >= LEAST_LEFT) {
      int seconds = Math.min(LONGEST, left - left % STRETCH);
      now = now.toBuilder().clock(now.clock().withCoolDown(seconds)).build();
      echo.replaceAll(line -> line.replace("no cool-down", seconds + " s cool-down"));
    }
    return new Assumptions(now, echo);
  }

  /** Seconds that no superset uses; 0 if none fits. */
  private static int left(Problem problem) {
    Intervals clock = problem.clock();
    int supersets = SessionLength.supersetsThatFit(clock, problem.minutes());
    return supersets == 0 ? 0 : 60 * problem.minutes() - SessionLength.seconds(clock, supersets);
  }
}
