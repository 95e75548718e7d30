package counterset.score;

import counterset.model.English;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;

/**
 * A target of several sessions is trained directly on at least two days of the week; a unit is a
 * missing day.
 */
public final class WeekFrequency extends DayConstraint {

  /**
   * Bull et al., WHO 2020 guidelines on physical activity and sedentary behaviour, Br J Sports Med
   * 54 (2020) 1451-1462.
   */
  private static final int DAYS = 2;

  WeekFrequency() {
    super(
        "weekFrequency",
        Level.MEDIUM,
        1,
        "A target of several sessions is trained on at least two days of the week.",
        "per missing day",
        "On too few days of the week");
  }

  @Override
  void wanted(WeekFacts facts, Counts counts) {
    for (WeekTarget target : facts.targets()) {
      if (target.onSeveralDays()) {
        counts.add(new Subject(Kind.MUSCLE, target.muscle()), 0);
      }
    }
  }

  @Override
  void ofExercise(WeekFacts facts, WeekDay day, Candidate exercise, Counts counts) {
    for (WeekTarget target : facts.targets()) {
      if (target.onSeveralDays() && exercise.exercise().primary().contains(target.muscle())) {
        counts.add(new Subject(Kind.MUSCLE, target.muscle()), day.facts().clock().rounds());
      }
    }
  }

  @Override
  int measure(WeekFacts facts, Subject muscle, int[] byDay) {
    int days = 0;
    for (int day = 0; day < facts.days().size(); day++) {
      days += byDay[day] > 0 ? 1 : 0;
    }
    return Math.max(0, DAYS - days);
  }

  @Override
  public String counted(int matches) {
    return English.count(matches, "target");
  }

  @Override
  public String said(WeekMatch match, WeekPlan week, String days) {
    return days.isEmpty() ? "on no day" : "only " + days;
  }
}
