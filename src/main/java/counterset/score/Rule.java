package counterset.score;

import java.util.Map;

/**
 * A constraint as a problem weighs it.
 *
 * @param level its level in the problem
 * @param perUnit what one unit adds to the score: below 0 for a cost
 */
public record Rule(Constraint constraint, Level level, int perUnit) {

  /** The constraint at its own level. */
  static Rule of(Constraint constraint, Map<String, Integer> overrides) {
    int weight = constraint.weight(overrides);
    return new Rule(constraint, constraint.level(), constraint.isReward() ? weight : -weight);
  }
}
