package counterset.score;

import counterset.model.English;

/**
 * Exercises, variants counting as the same, do not come again too soon, nor families on
 * neighbouring days; a unit is a point. In a block an exercise rests a week and may come again in
 * the next but one (common practice, no source).
 */
public final class WeekRepeated extends DayConstraint {

  private static final int FRESH_AFTER_DAYS = 14;
  private static final int EXERCISE_POINTS = 12;
  private static final int FAMILY_POINTS = 4;

  WeekRepeated() {
    super(
        "weekRepeated",
        Level.SOFT,
        1,
        "Exercises do not come again too soon, nor families on neighbouring days.",
        "12 per exercise and pair of sessions within two weeks, 4 per family on neighbouring days",
        "Again too soon");
  }

  @Override
  void ofExercise(WeekFacts facts, WeekDay day, Candidate exercise, Counts counts) {
    counts.add(new Subject(Kind.EXERCISE, exercise.exercise().root()), 1);
    counts.add(new Subject(Kind.FAMILY, exercise.exercise().family()), 1);
  }

  @Override
  void ofEarlier(EarlierDay earlier, Counts counts) {
    earlier.roots().forEach(root -> counts.add(new Subject(Kind.EXERCISE, root), 1));
    earlier.families().forEach(family -> counts.add(new Subject(Kind.FAMILY, family), 1));
  }

  @Override
  int measurePair(Subject subject, int apart, int one, int other) {
    if (one == 0 || other == 0) {
      return 0;
    }
    if (subject.kind() == Kind.EXERCISE) {
      return apart < FRESH_AFTER_DAYS ? EXERCISE_POINTS : 0;
    }
    return apart <= 1 ? FAMILY_POINTS : 0;
  }

  @Override
  public String counted(int matches) {
    return English.count(matches, "time");
  }
}
