package counterset.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import counterset.score.Candidate;
import counterset.score.WeekScore;

/**
 * Scores drafts for the solver, by what a move changes.
 *
 * <p>The solver makes a move, asks for the score and takes the move back; for a step it makes the
 * move once more and does not ask. So this holds a base that all is worked out for, and what stands
 * in each spot now. A spot that is asked for with the same exercise twice running belongs to a step
 * and becomes part of the base. That only decides how far now is from the base: the score is always
 * that of now.
 */
public final class DraftScore implements IncrementalScoreCalculator<Draft, HardMediumSoftScore> {

  private DayScore[] days;
  private WeekScore week;
  private Candidate[] now;
  private Candidate[] base;
  // What was there when the score was last asked for, where that was not the base.
  private Candidate[] asked;
  private boolean[] wasAsked;
  private int[] touched;
  private boolean[] isTouched;
  private int touches;
  private int[] dayOf;
  private int[] indexOf;

  @Override
  public void resetWorkingSolution(Draft draft) {
    Task task = draft.getTask();
    int spots = draft.getSpots().size();
    now = new Candidate[spots];
    asked = new Candidate[spots];
    wasAsked = new boolean[spots];
    touched = new int[spots];
    isTouched = new boolean[spots];
    touches = 0;
    dayOf = new int[spots];
    indexOf = new int[spots];
    for (Spot spot : draft.getSpots()) {
      now[spot.getNumber()] = spot.getCandidate();
      dayOf[spot.getNumber()] = spot.getDay();
      indexOf[spot.getNumber()] = spot.getIndex();
    }
    base = now.clone();
    week = task.week().map(WeekScore::new).orElse(null);
    days = new DayScore[task.days().size()];
    for (int day = 0; day < days.length; day++) {
      days[day] = new DayScore(task.days().get(day).from().facts(), task.mood());
    }
    for (int number = 0; number < spots; number++) {
      days[dayOf[number]].set(indexOf[number], now[number]);
    }
    for (int day = 0; day < days.length; day++) {
      days[day].compute();
      if (week != null) {
        week.add(task.week().get().days().get(day), days[day].places());
      }
    }
    if (week != null) {
      for (int day = 0; day < days.length; day++) {
        days[day].joinWeek(week, task.week().get().days().get(day));
      }
    }
  }

  @Override
  public void beforeVariableChanged(Object entity, String variableName) {
    // What stood there is known.
  }

  @Override
  public void afterVariableChanged(Object entity, String variableName) {
    Spot spot = (Spot) entity;
    int number = spot.getNumber();
    now[number] = spot.getCandidate();
    if (!isTouched[number]) {
      isTouched[number] = true;
      touched[touches++] = number;
    }
  }

  @Override
  public HardMediumSoftScore calculateScore() {
    settle();
    int kept = 0;
    for (int i = 0; i < touches; i++) {
      int number = touched[i];
      if (now[number] == base[number]) {
        isTouched[number] = false;
        wasAsked[number] = false;
      } else {
        days[dayOf[number]].change(indexOf[number], now[number]);
        asked[number] = now[number];
        wasAsked[number] = true;
        touched[kept++] = number;
      }
    }
    touches = kept;
    int hard = 0;
    int medium = 0;
    int soft = 0;
    for (DayScore day : days) {
      day.tryOut();
      hard += day.hard();
      medium += day.medium();
      soft += day.soft();
    }
    if (week != null) {
      hard += week.hard();
      medium += week.medium();
      soft += week.soft();
    }
    for (int day = days.length - 1; day >= 0; day--) {
      days[day].forget();
    }
    return HardMediumSoftScore.of(hard, medium, soft);
  }

  private void settle() {
    boolean any = false;
    for (int i = 0; i < touches; i++) {
      int number = touched[i];
      if (wasAsked[number] && asked[number] == now[number] && now[number] != base[number]) {
        days[dayOf[number]].change(indexOf[number], now[number]);
        base[number] = now[number];
        any = true;
      }
    }
    if (any) {
      for (DayScore day : days) {
        day.settle();
      }
    }
  }

  @Override
  public void beforeEntityAdded(Object entity) {
    throw new IllegalStateException("Sessions keep their places.");
  }

  @Override
  public void afterEntityAdded(Object entity) {
    throw new IllegalStateException("Sessions keep their places.");
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    throw new IllegalStateException("Sessions keep their places.");
  }

  @Override
  public void afterEntityRemoved(Object entity) {
    throw new IllegalStateException("Sessions keep their places.");
  }
}
