package counterset.planning.moves;

import counterset.planning.SessionSolution;
import counterset.planning.WeekDay;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.scoring.WeekScore;
import java.util.ArrayList;
import java.util.List;

/**
 * A {@link Walk} through a whole week: each try changes one session, and is judged by what that
 * does to the session and to the week.
 */
final class WeekWalk {

  /** The share of the tries that only change a modification, in a session with tracks. */
  private static final int RECAST_PERCENT = 5;

  private final List<DayWalk> days = new ArrayList<>();
  private final List<DayWalk> movable = new ArrayList<>();
  private final WeekScore week;
  private final Dice dice;
  private long weekEnergy;
  private long energy;
  private long bestEnergy;

  /** A walk that starts from a solution. */
  WeekWalk(WeekSolution solution, DayTools[] tools, Dice dice) {
    this.dice = dice;
    this.week = new WeekScore(solution.getFacts());
    for (WeekDay day : solution.getFacts().days()) {
      SessionSolution session = WeekSolutions.session(solution, day);
      DayWalk walk = new DayWalk(tools[day.index()], session, dice);
      days.add(walk);
      if (DayTools.isMovable(session)) {
        movable.add(walk);
      }
      week.add(day, walk.lineup.candidates());
      energy += walk.energy;
    }
    weekEnergy = Energy.STRICT.of(week);
    energy += weekEnergy;
    bestEnergy = energy;
  }

  /** Goes so many tries; needs a session that can be changed. */
  void go(Temperature temperature, int tries) {
    for (int i = 0; i < tries; i++) {
      DayWalk day = movable.get(dice.nextInt(movable.size()));
      double lowest = energy - temperature.loss(dice);
      if (day.followers != null && dice.nextInt(100) < RECAST_PERCENT) {
        recast(day, lowest);
      } else if (day.propose()) {
        attempt(day, lowest);
      }
    }
  }

  /** The sessions, each at the best point of the walk. */
  List<DayWalk> days() {
    return days;
  }

  /** The best point's, that of the whole week. */
  long bestEnergy() {
    return bestEnergy;
  }

  private void attempt(DayWalk day, double lowest) {
    day.score.tryOut(day.change);
    long others = energy - weekEnergy - day.energy;
    long own = Energy.STRICT.of(day.score);
    // The week and the followers only take points away.
    if (others + own < lowest) {
      return;
    }
    boolean reorder = day.change.isReorder();
    long between = weekEnergy;
    if (!reorder) {
      week.tryOut(day.day, day.lineup.candidates(), day.change);
      between = Energy.STRICT.of(week);
    }
    if (others + own + between < lowest) {
      undo(day);
      return;
    }
    if (day.followers == null) {
      day.lineup.make(day.change);
    } else {
      day.followers.leave(day.lineup);
      day.lineup.make(day.change);
      day.followers.tryCast(day.lineup);
      own += day.followers.energy(Energy.STRICT);
      if (others + own + between < lowest) {
        day.lineup.make(day.change);
        undo(day);
        return;
      }
      day.followers.accept();
    }
    day.score.compute(day.lineup.candidates());
    arrive(day, own, between);
  }

  private void undo(DayWalk day) {
    if (!day.change.isReorder()) {
      week.undo(day.day, day.lineup.candidates(), day.change);
    }
  }

  private void recast(DayWalk day, double lowest) {
    if (day.followers.tryAnother(day.lineup, dice)) {
      day.score.compute(day.lineup.candidates());
      long own = Energy.STRICT.of(day.score) + day.followers.energy(Energy.STRICT);
      if (energy - day.energy + own >= lowest) {
        day.followers.accept();
        arrive(day, own, weekEnergy);
      }
    }
  }

  private void arrive(DayWalk day, long own, long between) {
    energy += own - day.energy + between - weekEnergy;
    weekEnergy = between;
    day.arrive(own);
    if (energy > bestEnergy) {
      bestEnergy = energy;
      days.forEach(DayWalk::remember);
    }
  }
}
