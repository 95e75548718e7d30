package counterset.model;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a client's body does not allow, as rules over exercises.
 *
 * @param maxDemand the highest joint demand (0 to 3) allowed; a joint that is not named is free
 * @param avoidTraits traits that no exercise may have
 * @param avoidPositions positions that no exercise may take
 * @param favours movement patterns that help, which get a share of a session that trains their
 *     muscle groups
 * @param caution one plain sentence for the coach
 * @param source where the rules come from, in one line
 * @param rules the rules in words, each with its own source; may be empty
 */
public record Limitation(
    String id,
    String name,
    List<String> names,
    Map<Joint, Integer> maxDemand,
    Set<String> avoidTraits,
    Set<Position> avoidPositions,
    Set<String> favours,
    String caution,
    String source,
    List<Rule> rules) {

  public Limitation {
    names = List.copyOf(names);
    maxDemand = Ordered.map(maxDemand);
    avoidTraits = Ordered.set(avoidTraits);
    avoidPositions = Ordered.set(avoidPositions);
    favours = Ordered.set(favours);
    rules = List.copyOf(rules);
  }

  /** A limitation to be made. */
  public static LimitationBuilder builder() {
    return new LimitationBuilder();
  }

  /** The same limitation, to be changed. */
  public LimitationBuilder toBuilder() {
    return new LimitationBuilder(this);
  }

  /** Whether someone with this limitation may do the exercise. */
  public boolean allows(Exercise exercise) {
    return !avoidPositions.contains(exercise.position())
        && exercise.traits().stream().noneMatch(avoidTraits::contains)
        && maxDemand.entrySet().stream()
            .allMatch(max -> exercise.demandOn(max.getKey()) <= max.getValue());
  }
}
