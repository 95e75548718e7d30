package counterset.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What sessions want: the movement patterns, and which share of the places each gets where a region
 * or a muscle group is asked for. Measured on sessions made by hand; common practice, no source.
 *
 * @param patterns in order: an exercise belongs to the first that names its family, else to the
 *     first that names its pattern
 * @param shares by region ({@code whole} for the whole body) or muscle group: parts of 100 by
 *     pattern
 */
public record Wants(List<MovementPattern> patterns, Map<String, Map<String, Integer>> shares) {

  /** The id under which the shares of the whole body stand. */
  public static final String WHOLE = "whole";

  /** Nothing is wanted. */
  public static final Wants NOTHING = new Wants(List.of(), Map.of());

  public Wants {
    patterns = List.copyOf(patterns);
    Map<String, Map<String, Integer>> copy = new LinkedHashMap<>();
    shares.forEach((id, of) -> copy.put(id, Ordered.map(of)));
    shares = Ordered.map(copy);
  }

  /** The pattern that an exercise belongs to; empty if no pattern names it. */
  public Optional<MovementPattern> patternOf(Exercise exercise) {
    return patterns.stream()
        .filter(pattern -> pattern.families().contains(exercise.family()))
        .findFirst()
        .or(
            () ->
                patterns.stream()
                    .filter(pattern -> pattern.patterns().contains(exercise.pattern()))
                    .findFirst());
  }

  /** Parts of 100 by pattern for a region or muscle group; nothing for one that is not known. */
  public Map<String, Integer> sharesOf(String id) {
    return shares.getOrDefault(id, Map.of());
  }
}
