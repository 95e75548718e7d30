package counterset.score;

import counterset.model.English;
import counterset.model.WeekProblem;

/**
 * A muscle group with 3 direct sets or more rests 48 hours before the next such session; a unit is
 * a muscle group and pair of sessions. Days are counted between sessions that start at the same
 * time of day: two on neighbouring days are 24 h apart.
 */
public final class RecoveryShort extends DayConstraint {

  private static final int SETS = 3;

  /**
   * Hours of rest for a muscle group (Garber et al., ACSM position stand, Med Sci Sports Exerc 43
   * (2011) 1334-1359).
   */
  private static final int HOURS = 48;

  private static final int HOURS_A_DAY = 24;

  RecoveryShort() {
    super(
        "recoveryShort",
        Level.SOFT,
        25,
        "A muscle group with 3 direct sets or more rests 48 hours before the next such session.",
        "per muscle group and pair of sessions",
        "Less than 48 h of recovery");
  }

  @Override
  public boolean isRule(WeekProblem problem) {
    return problem.recoveryIsRule();
  }

  @Override
  void ofExercise(WeekFacts facts, WeekDay day, Candidate exercise, Counts counts) {
    int rounds = day.facts().clock().rounds();
    for (String muscle : exercise.exercise().primary()) {
      counts.add(new Subject(Kind.MUSCLE, muscle), rounds);
    }
  }

  @Override
  void ofEarlier(EarlierDay earlier, Counts counts) {
    earlier
        .directSets()
        .forEach((muscle, sets) -> counts.add(new Subject(Kind.MUSCLE, muscle), sets));
  }

  @Override
  int measurePair(Subject muscle, int apart, int one, int other) {
    return one >= SETS && other >= SETS && apart * HOURS_A_DAY < HOURS ? 1 : 0;
  }

  @Override
  public String counted(int matches) {
    return English.count(matches, "time");
  }
}
