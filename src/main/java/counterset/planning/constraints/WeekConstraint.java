package counterset.planning.constraints;

import counterset.model.Identified;
import counterset.model.WeekProblem;
import counterset.planning.constraints.SessionConstraint.Level;

/**
 * The catalogue of the constraints between the sessions of a week: what each is called, how much it
 * weighs and what it says. Those of the sessions themselves are in {@link SessionConstraint}.
 *
 * <p>All look at what the session itself does, not at the modifications of its tracks.
 */
public enum WeekConstraint implements Identified {
  WEEK_FREQUENCY(
      "weekFrequency",
      Level.MEDIUM,
      1,
      "A target of several sessions is trained on at least two days of the week.",
      "per missing day"),
  RECOVERY_SHORT(
      "recoveryShort",
      Level.SOFT,
      25,
      "A muscle group with 3 direct sets or more rests 48 hours before the next such session.",
      "per muscle group and pair of sessions"),
  WEEKLY_VOLUME(
      "weeklyVolume",
      Level.SOFT,
      4,
      "Each target gets a useful number of sets in the week.",
      "per half set outside the range"),
  WEEK_REPEATED(
      "weekRepeated",
      Level.SOFT,
      1,
      "Exercises do not come again too soon, nor families on neighbouring days.",
      "12 per exercise and pair of sessions within two weeks, 4 per family on neighbouring days");

  /** What a constraint that the problem makes a rule weighs, unless the problem says otherwise. */
  private static final int RULE_WEIGHT = 1;

  private final String id;
  private final Level level;
  private final int defaultWeight;
  private final String sentence;
  private final String unit;

  WeekConstraint(String id, Level level, int defaultWeight, String sentence, String unit) {
    this.id = id;
    this.level = level;
    this.defaultWeight = defaultWeight;
    this.sentence = sentence;
    this.unit = unit;
  }

  @Override
  public String id() {
    return id;
  }

  /** Its level, unless a problem makes it a rule. */
  public Level level() {
    return level;
  }

  /** Its level in a problem. */
  public Level level(WeekProblem problem) {
    return isRule(problem) ? Level.HARD : level;
  }

  /** The points of one unit unless the problem says otherwise, at least 1. */
  public int defaultWeight() {
    return defaultWeight;
  }

  /**
   * The points of one unit in a problem, which may override the default; 0 switches the constraint
   * off. As a rule one unit is 1 hard point, as it is for the rules of a session.
   */
  public int weight(WeekProblem problem) {
    return problem.weights().getOrDefault(id, isRule(problem) ? RULE_WEIGHT : defaultWeight);
  }

  /** Whether a problem gives it another weight or level than the default. */
  public boolean isOverridden(WeekProblem problem) {
    return isRule(problem) || problem.weights().containsKey(id);
  }

  private boolean isRule(WeekProblem problem) {
    return this == RECOVERY_SHORT && problem.recoveryIsRule();
  }

  /** What it wants, as a coach would say it. */
  public String sentence() {
    return sentence;
  }

  /** What its weight is counted by. */
  public String unit() {
    return unit;
  }
}
