package counterset.score;

import counterset.model.English;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekProblem.SetRange;

/**
 * Each target gets a useful number of sets in the week, indirect ones counted half; a unit is a
 * half set outside its range.
 */
public final class WeeklyVolume extends DayConstraint {

  WeeklyVolume() {
    super(
        "weeklyVolume",
        Level.SOFT,
        4,
        "Each target gets a useful number of sets in the week.",
        "per half set outside the range",
        "Weekly sets out of range");
  }

  @Override
  void wanted(WeekFacts facts, Counts counts) {
    facts.targets().forEach(target -> counts.add(new Subject(Kind.MUSCLE, target.muscle()), 0));
  }

  @Override
  void ofExercise(WeekFacts facts, WeekDay day, Candidate exercise, Counts counts) {
    for (WeekTarget target : facts.targets()) {
      int halves = halves(exercise, target.muscle());
      if (halves > 0) {
        int rounds = day.facts().clock().rounds();
        counts.add(new Subject(Kind.MUSCLE, target.muscle()), halves * rounds);
      }
    }
  }

  private static int halves(Candidate exercise, String muscle) {
    if (exercise.exercise().primary().contains(muscle)) {
      return 2;
    }
    return exercise.exercise().secondary().contains(muscle) ? 1 : 0;
  }

  @Override
  int measure(WeekFacts facts, Subject muscle, int[] byDay) {
    SetRange range = facts.problem().range(muscle.id());
    int halfSets = 0;
    for (int day = 0; day < facts.days().size(); day++) {
      halfSets += byDay[day];
    }
    return Math.max(0, Math.max(2 * range.least() - halfSets, halfSets - 2 * range.most()));
  }

  @Override
  public String counted(int matches) {
    return English.count(matches, "target");
  }

  @Override
  public String said(WeekMatch match, WeekPlan week, String days) {
    return week.sets().stream()
        .filter(sets -> sets.muscle().equals(match.subject()))
        .findFirst()
        .map(
            sets ->
                English.halves(sets.halfSets())
                    + ", wanted "
                    + sets.range().least()
                    + " to "
                    + sets.range().most())
        .orElse(days);
  }
}
