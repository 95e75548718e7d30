package counterset.score;

import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekProblem;

/**
 * Sees the sessions of a week together: how often something, its subject, comes in each of them. It
 * looks at what the sessions themselves do, not at the modifications of their tracks.
 *
 * <p>A subclass measures all days of a subject together or every two of them, or both.
 */
public abstract class DayConstraint extends Constraint {

  DayConstraint(String id, Level level, int weight, String sentence, String unit, String topic) {
    super(id, level, weight, sentence, unit, topic);
  }

  /** Whether a problem makes it a rule. */
  public boolean isRule(WeekProblem problem) {
    return false;
  }

  /** It, as a problem weighs it: as a rule one unit is 1 hard point, as for those of a session. */
  public final Rule rule(WeekProblem problem) {
    boolean rule = isRule(problem);
    int weight = problem.weights().getOrDefault(id(), rule ? 1 : defaultWeight());
    return new Rule(this, rule ? Level.HARD : level(), -weight);
  }

  /** Names the subjects that matter even if no session has anything of them. */
  void wanted(WeekFacts facts, Counts counts) {
    // Most look at what is there.
  }

  /** Adds what an exercise counts for in all its rounds, once a superset. */
  abstract void ofExercise(WeekFacts facts, WeekDay day, Candidate exercise, Counts counts);

  /** Adds what a session before the week counts for. */
  void ofEarlier(EarlierDay earlier, Counts counts) {
    // Some look at this week only.
  }

  /**
   * Units for all days of a subject together, at least 0.
   *
   * @param byDay how much of it there is in each session of the week; what follows is of sessions
   *     before it
   */
  int measure(WeekFacts facts, Subject subject, int[] byDay) {
    return 0;
  }

  /**
   * Units for two days of a subject, at least 0.
   *
   * @param apart whole days between them, at least 0
   * @param one how much of it there is in the one session
   * @param other likewise in the other
   */
  int measurePair(Subject subject, int apart, int one, int other) {
    return 0;
  }

  @Override
  public final String scope() {
    return "week";
  }

  /** What it has counted, after its topic: {@code 2 targets}. */
  public abstract String counted(int matches);

  /**
   * What a match means, after its subject.
   *
   * @param days the sessions that it is about; empty text if none
   */
  public String said(WeekMatch match, WeekPlan week, String days) {
    return days;
  }

  /** What a subject is. */
  enum Kind {
    EXERCISE,
    FAMILY,
    MUSCLE
  }

  /** Something that is counted by day: all variants of an exercise, a family, a muscle group. */
  record Subject(Kind kind, String id) {}

  /** Takes in what is counted. */
  interface Counts {

    /** So much of a subject, at least 0. */
    void add(Subject subject, int amount);
  }
}
