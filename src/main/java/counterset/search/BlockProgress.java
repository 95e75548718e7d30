package counterset.search;

import counterset.model.Intervals;
import counterset.model.Problem;
import counterset.timeline.SessionLength;

/**
 * How the work of a block rises: in cycles of four weeks, the first as asked, the second with 5 s
 * more in each work interval, the third with 10 s more, the fourth lighter.
 *
 * <p>A work interval grows only as far as the session keeps its supersets within its minutes; where
 * there is no room for 5 s, the clock stays and only loads can go up. In the lighter week a work
 * interval is a fifth shorter, to the nearest 5 s, and the rest as much longer as keeps a further
 * superset out.
 *
 * <p>That work goes up step by step is advised (Garber et al., ACSM position stand, Med Sci Sports
 * Exerc 43 (2011) 1334-1359; from memory); the steps, and that every fourth week is lighter, are
 * common practice, no source.
 */
public final class BlockProgress {

  /** The weeks after which it begins anew. */
  public static final int CYCLE = 4;

  private static final int STEP_SECONDS = 5;
  private static final int LIGHTER_PERCENT = 80;

  private BlockProgress() {}

  /**
   * The clock of a session in a week.
   *
   * @param week from 1
   */
  public static Intervals clock(Problem asked, int week) {
    return isLighter(week) ? lighter(asked) : longer(asked, (week - 1) % CYCLE * STEP_SECONDS);
  }

  /**
   * Whether a week is a lighter one.
   *
   * @param week from 1
   */
  public static boolean isLighter(int week) {
    return week % CYCLE == 0;
  }

  /** What a week changes in a session, as a coach would say it. */
  public static String sentence(Problem asked, int week) {
    Intervals now = clock(asked, week);
    int more = now.work() - asked.clock().work();
    if (isLighter(week)) {
      return "A lighter week: "
          + now.work()
          + " s of work and "
          + now.rest()
          + " s of rest; leave the loads as they are.";
    }
    if (more > 0) {
      return now.work() + " s of work, " + more + " s more than in week 1.";
    }
    return week % CYCLE == 1
        ? now.work() + " s of work, as asked."
        : now.work() + " s of work: the minutes have no room for more, so only loads can go up.";
  }

  private static Intervals longer(Problem asked, int most) {
    Intervals clock = asked.clock();
    for (int more = most; more > 0; more -= STEP_SECONDS) {
      Intervals longer = with(clock, clock.work() + more, clock.rest());
      if (fit(asked, longer) == fit(asked, clock)) {
        return longer;
      }
    }
    return clock;
  }

  private static Intervals lighter(Problem asked) {
    Intervals clock = asked.clock();
    int nearest = Math.round(clock.work() * LIGHTER_PERCENT / 100f / STEP_SECONDS);
    int work = Math.max(1, Math.min(clock.work() - 1, nearest * STEP_SECONDS));
    int supersets = fit(asked, clock);
    int rest = clock.rest();
    while (fit(asked, with(clock, work, rest)) > supersets
        && fit(asked, with(clock, work, rest + 1)) >= supersets) {
      rest++;
    }
    return with(clock, work, rest);
  }

  private static int fit(Problem asked, Intervals clock) {
    return SessionLength.supersetsThatFit(clock, asked.minutes());
  }

  private static Intervals with(Intervals clock, int work, int rest) {
    return new Intervals(
        clock.getReady(),
        clock.warmUp(),
        work,
        clock.between(),
        rest,
        clock.coolDown(),
        clock.perSuperset(),
        clock.rounds());
  }
}
