package counterset.search;

import counterset.model.Changeover;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Changes of the minutes and of the lengths that make the clock. */
final class ClockChanges {

  private static final int MOST_MINUTES_MORE = 5;
  private static final int SHORTEST_WARM_UP = 60;
  private static final int STEP = 5;

  private final Problem problem;
  private final Plan plan;
  private final Intervals clock;
  private final List<Change> changes = new ArrayList<>();

  private ClockChanges(Problem problem, Plan plan) {
    this.problem = problem;
    this.plan = plan;
    this.clock = problem.clock();
  }

  static List<Change> of(Problem problem, Plan plan) {
    ClockChanges all = new ClockChanges(problem, plan);
    all.moreMinutes();
    all.warmUp();
    all.pauses();
    all.fewerMinutes();
    return all.changes;
  }

  /** Only minutes that make room for another superset. */
  private void moreMinutes() {
    int fit = fit(problem.minutes());
    int least = Math.max(problem.minutes() + 1, minutesFor(1));
    int most = Math.max(problem.minutes() + MOST_MINUTES_MORE, least);
    for (int minutes = least; minutes <= most; minutes++) {
      if (fit(minutes) > fit) {
        fit = fit(minutes);
        int target = minutes;
        add("minutes", minutes + " min", draft -> draft.minutes = target);
      }
    }
  }

  /** The longest warm-up that makes room for another superset, in whole steps. */
  private void warmUp() {
    int next = SessionLength.seconds(clock, fit(problem.minutes()) + 1);
    int seconds = (clock.warmUp() - (next - 60 * problem.minutes())) / STEP * STEP;
    if (seconds >= SHORTEST_WARM_UP) {
      add("warm-up", "a warm-up of " + seconds + " s", draft -> draft.clock = clock(seconds));
    }
  }

  /** As much more rest, or time to switch, as the longest changeover lacks. */
  private void pauses() {
    int excess = plan.changeovers().stream().mapToInt(Changeover::excess).max().orElse(0);
    if (excess > 0) {
      int more = (excess + STEP - 1) / STEP * STEP;
      int between = clock.between() + more;
      int rest = clock.rest() + more;
      add("switch", between + " s to switch", draft -> draft.clock = pauses(between, clock.rest()));
      add("rest", "a rest of " + rest + " s", draft -> draft.clock = pauses(clock.between(), rest));
    }
  }

  /** As long as there is something to fill it with. */
  private void fewerMinutes() {
    int full =
        (int)
            plan.session().supersets().stream()
                .filter(superset -> superset.exercises().size() == clock.perSuperset())
                .count();
    if (full > 0 && full < fit(problem.minutes())) {
      int minutes = minutesFor(full);
      if (minutes < problem.minutes()) {
        add("minutes", "only " + minutes + " min", draft -> draft.minutes = minutes);
      }
    }
  }

  private void add(String topic, String phrase, Consumer<ProblemDraft> edit) {
    changes.add(new Change(topic, phrase, edit));
  }

  private int fit(int minutes) {
    return SessionLength.supersetsThatFit(clock, minutes);
  }

  private int minutesFor(int supersets) {
    return (SessionLength.seconds(clock, supersets) + 59) / 60;
  }

  private Intervals clock(int warmUp) {
    return new Intervals(
        clock.getReady(),
        warmUp,
        clock.work(),
        clock.between(),
        clock.rest(),
        clock.coolDown(),
        clock.perSuperset(),
        clock.rounds());
  }

  private Intervals pauses(int between, int rest) {
    return new Intervals(
        clock.getReady(),
        clock.warmUp(),
        clock.work(),
        between,
        rest,
        clock.coolDown(),
        clock.perSuperset(),
        clock.rounds());
  }
}
