package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.MovementPattern;
import counterset.model.Muscle;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import counterset.model.Wants;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The share of the places that each movement pattern is to get, as an exact fraction.
 *
 * <p>The targets are taken apart into the whole body, regions and single muscle groups, in this
 * order. The whole and a region count twice their least emphasis; what a muscle group of them has
 * above that counts by itself, as does a group by its own name.
 */
final class Shares {

  private static final int HUNDRED = 100;
  private static final int LARGE_PART = 2;
  private static final int FAVOURED = 8;

  private final Map<String, Long> shares = new LinkedHashMap<>();
  private final Map<String, Long> inherited = new HashMap<>();
  private final List<String> regions = new ArrayList<>();
  private final long unit;

  Shares(Problem problem, Catalogue catalogue) {
    Map<String, Integer> left = new LinkedHashMap<>();
    for (Target target : problem.targets()) {
      left.put(target.muscle(), target.emphasis());
    }
    Map<String, Integer> parts = new LinkedHashMap<>();
    take(Wants.WHOLE, groups(catalogue, Region.values()), left, parts);
    for (Region region : Region.values()) {
      take(region.id(), groups(catalogue, region), left, parts);
    }
    parts.putAll(left);
    unit = (long) HUNDRED * parts.values().stream().mapToInt(Integer::intValue).sum();
    for (Map.Entry<String, Integer> part : parts.entrySet()) {
      for (Map.Entry<String, Integer> wish : catalogue.wants().sharesOf(part.getKey()).entrySet()) {
        shares.merge(wish.getKey(), (long) part.getValue() * wish.getValue(), Long::sum);
      }
    }
    favour(problem, catalogue);
  }

  /** Each limitation favours patterns, as far as they train what is asked for: 8 of 100 places. */
  private void favour(Problem problem, Catalogue catalogue) {
    Set<String> targets =
        problem.targets().stream().map(Target::muscle).collect(Collectors.toSet());
    for (MovementPattern pattern : catalogue.wants().patterns()) {
      boolean favoured =
          problem.limitations().stream()
              .anyMatch(id -> catalogue.limitations().get(id).favours().contains(pattern.id()));
      boolean trains =
          catalogue.exercises().values().stream()
              .filter(it -> catalogue.wants().patternOf(it).equals(Optional.of(pattern)))
              .anyMatch(it -> !Collections.disjoint(it.primary(), targets));
      if (favoured && trains) {
        shares.merge(pattern.id(), FAVOURED * unit / HUNDRED, Math::max);
      }
    }
  }

  private static List<String> groups(Catalogue catalogue, Region... regions) {
    return catalogue.muscles().values().stream()
        .filter(Muscle::defaultTarget)
        .filter(muscle -> Stream.of(regions).anyMatch(muscle.region()::equals))
        .map(Muscle::id)
        .toList();
  }

  private void take(
      String id, List<String> groups, Map<String, Integer> left, Map<String, Integer> parts) {
    if (groups.isEmpty() || !left.keySet().containsAll(groups)) {
      return;
    }
    regions.add(id);
    int least = groups.stream().mapToInt(left::get).min().orElseThrow();
    parts.put(id, LARGE_PART * least);
    for (String group : groups) {
      if (left.merge(group, -least, Integer::sum) == 0) {
        left.remove(group);
      }
    }
  }

  /** The share of a pattern in {@link #unit}s. */
  long of(String pattern) {
    return shares.getOrDefault(pattern, 0L);
  }

  /** What it should get at least: its own, or what it has been left if it has none. */
  long due(String pattern) {
    return of(pattern) > 0 ? of(pattern) : withInherited(pattern);
  }

  /** The same, with what others leave to it. */
  long withInherited(String pattern) {
    return inherited.getOrDefault(pattern, 0L);
  }

  /** What stands for all places. */
  long unit() {
    return unit;
  }

  /**
   * What nothing can fill leaves its share to the largest pattern of its group that something can;
   * the earlier one in the list of two that are equal.
   *
   * @param patterns all that there are, in order
   */
  void handOn(List<MovementPattern> patterns, Set<String> fillable) {
    inherited.putAll(shares);
    for (MovementPattern pattern : patterns) {
      if (!fillable.contains(pattern.id())) {
        patterns.stream()
            .filter(heir -> heir.group() == pattern.group() && fillable.contains(heir.id()))
            .max(
                Comparator.comparing((MovementPattern heir) -> of(heir.id()))
                    .thenComparing(patterns::indexOf, Comparator.reverseOrder()))
            .ifPresent(heir -> inherited.merge(heir.id(), removed(pattern.id()), Long::sum));
      }
    }
  }

  private long removed(String pattern) {
    Long share = inherited.remove(pattern);
    return share == null ? 0 : share;
  }

  boolean isWhole() {
    return regions.contains(Wants.WHOLE);
  }

  /** Whether the legs are asked for and no other region. */
  boolean isForLegs() {
    return regions.equals(List.of(Region.LOWER.id()));
  }

  /** Whether a muscle group is asked for as a part of a region, not by its own name. */
  boolean isOfRegion(Muscle muscle) {
    return isWhole() || regions.contains(muscle.region().id());
  }
}
