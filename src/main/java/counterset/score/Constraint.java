package counterset.score;

import counterset.model.Identified;
import java.util.Map;

/**
 * One thing that sessions are judged by: what it is called, how much it weighs, what it says and,
 * in its scope, what it measures. Everything that scores, explains or bounds a session asks these
 * classes, so that each is stated once.
 *
 * <p>The scopes are its subclasses: {@link PlaceConstraint}, {@link SupersetConstraint}, {@link
 * StepConstraint}, {@link CountConstraint}, {@link ShareConstraint}, {@link OrderConstraint},
 * {@link SessionConstraint}, {@link TrackConstraint} and {@link DayConstraint}.
 */
public abstract class Constraint implements Identified {

  private final String id;
  private final Level level;
  private final int defaultWeight;
  private final String sentence;
  private final String unit;
  private final String topic;

  /**
   * A constraint.
   *
   * @param weight the points of one unit unless a problem says otherwise, at least 1
   * @param sentence what it wants, as a coach would say it
   * @param unit what its weight is counted by
   * @param topic what it is about, in a few words without a figure: {@code Equipment changes}
   */
  Constraint(String id, Level level, int weight, String sentence, String unit, String topic) {
    this.id = id;
    this.level = level;
    this.defaultWeight = weight;
    this.sentence = sentence;
    this.unit = unit;
    this.topic = topic;
  }

  @Override
  public final String id() {
    return id;
  }

  /** Its level, unless a problem makes it a rule. */
  public final Level level() {
    return level;
  }

  /** The points of one unit unless the problem says otherwise, at least 1. */
  public final int defaultWeight() {
    return defaultWeight;
  }

  /** What it wants, as a coach would say it. */
  public final String sentence() {
    return sentence;
  }

  /** What its weight is counted by. */
  public final String unit() {
    return unit;
  }

  /** What it is about, in a few words without a figure: {@code Equipment changes}. */
  public final String topic() {
    return topic;
  }

  /** What it judges: {@code session} or {@code week}. */
  public abstract String scope();

  /** Whether a match earns points instead of costing them. */
  public boolean isReward() {
    return false;
  }

  /**
   * The points of one unit.
   *
   * @param overrides weights by id that a problem gives; 0 switches a constraint off
   */
  public final int weight(Map<String, Integer> overrides) {
    return overrides.getOrDefault(id, defaultWeight);
  }

  @Override
  public final String toString() {
    return id;
  }
}
