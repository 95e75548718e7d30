package counterset.intake;

import counterset.ask.AskReading;
import counterset.ask.AskTopic;
import counterset.model.Catalogue;
import counterset.model.Intervals;
import counterset.model.Problem;
import counterset.score.RoundsByLength;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;

/**
 * What follows from an ask that says nothing of it: rounds where good exercises are too few for the
 * places, and a cool-down where the clock leaves a minute or more.
 *
 * @param echo how the ask was read, with these assumptions
 */
record Assumptions(Problem problem, List<String> echo) {

  private static final int LEAST_LEFT = 60;
  private static final int STRETCH = 30;
  private static final int LONGEST = 120;

  /** What an ask comes to, with what it is silent about. */
  static Assumptions of(AskReading reading, Problem problem, Catalogue catalogue) {
    Problem now = problem;
    List<String> echo = new ArrayList<>(reading.echo());
    if (reading.assumed().contains(AskTopic.ROUNDS)) {
      int rounds = RoundsByLength.of(now, catalogue);
      if (rounds > now.clock().rounds()) {
        now = now.toBuilder().clock(now.clock().withRounds(rounds)).build();
        echo.replaceAll(line -> line.replace(" 1 round", " " + rounds + " rounds"));
        echo.add("rounds: since there are too few good exercises for all places otherwise");
      }
    }
    int left = left(now);
    if (reading.assumed().contains(AskTopic.COOL_DOWN) && left >= LEAST_LEFT) {
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
