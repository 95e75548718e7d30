package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Muscle;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import counterset.model.Wants;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a problem wants of each movement pattern: the shares of all regions and muscle groups that
 * it asks for, put together. A region counts as asked for where all its muscle groups are targets.
 */
final class Wanted {

  // A region stands for several muscle groups, of which a coach thinks as two, roughly.
  private static final int REGION_WEIGHT = 2;

  // Two of 25 places: one exercise of a session of twenty minutes, on one side and the other.
  private static final double FAVOURED = 0.08;

  private final Map<String, Double> shares = new LinkedHashMap<>();
  private final List<String> regions = new ArrayList<>();

  private final Set<String> targets;
  private final boolean forUpperBody;
  private final Wants wants;

  private Wanted(Problem problem, Catalogue catalogue) {
    targets = problem.targets().stream().map(Target::muscle).collect(Collectors.toSet());
    wants = catalogue.wants();
    forUpperBody =
        targets.stream()
            .allMatch(muscle -> catalogue.muscles().get(muscle).region() == Region.UPPER);
  }

  /** The wants of a problem. */
  static Wanted of(Problem problem, Catalogue catalogue) {
    Wanted wanted = new Wanted(problem, catalogue);
    Map<String, Integer> open = new LinkedHashMap<>();
    for (Target target : problem.targets()) {
      open.put(target.muscle(), target.emphasis());
    }
    Map<String, Integer> parts = new LinkedHashMap<>();
    Set<String> all = muscles(catalogue, Set.of(Region.values()));
    if (open.keySet().containsAll(all)) {
      wanted.take(Wants.WHOLE, all, open, parts);
    }
    for (Region region : Region.values()) {
      Set<String> own = muscles(catalogue, Set.of(region));
      if (!own.isEmpty() && open.keySet().containsAll(own)) {
        wanted.take(region.id(), own, open, parts);
      }
    }
    open.forEach(parts::put);
    int whole = parts.values().stream().mapToInt(Integer::intValue).sum();
    parts.forEach(
        (id, weight) ->
            catalogue
                .wants()
                .sharesOf(id)
                .forEach(
                    (pattern, share) ->
                        wanted.shares.merge(pattern, share / 100.0 * weight / whole, Double::sum)));
    problem.limitations().stream()
        .flatMap(id -> catalogue.limitations().get(id).favours().stream())
        .filter(pattern -> wanted.concerns(pattern, catalogue))
        .forEach(pattern -> wanted.shares.merge(pattern, FAVOURED, Math::max));
    return wanted;
  }

  /** Whether exercises of a pattern train first of all what is asked for. */
  private boolean concerns(String pattern, Catalogue catalogue) {
    return catalogue.exercises().values().stream()
        .filter(
            exercise -> wants.patternOf(exercise).filter(it -> it.id().equals(pattern)).isPresent())
        .anyMatch(exercise -> exercise.primary().stream().anyMatch(targets::contains));
  }

  /** What is asked for more within a region counts as a part of its own. */
  private void take(
      String region, Set<String> own, Map<String, Integer> open, Map<String, Integer> parts) {
    regions.add(region);
    int least = own.stream().mapToInt(open::get).min().orElse(1);
    parts.put(region, REGION_WEIGHT * least);
    own.forEach(
        muscle -> {
          int more = open.remove(muscle) - least;
          if (more > 0) {
            open.put(muscle, more);
          }
        });
  }

  private static Set<String> muscles(Catalogue catalogue, Set<Region> regions) {
    Set<String> muscles = new LinkedHashSet<>();
    for (Muscle muscle : catalogue.muscles().values()) {
      if (regions.contains(muscle.region()) && muscle.defaultTarget()) {
        muscles.add(muscle.id());
      }
    }
    return muscles;
  }

  /** The share of the places that a pattern is to get, 0 to 1; 0 where nothing is said. */
  double share(String pattern) {
    return shares.getOrDefault(pattern, 0.0);
  }

  /**
   * Whether an exercise trains what is asked for: first of all, or besides in a pattern that is to
   * get a share, as the squat of a session for the glutes does.
   */
  boolean isTrainedBy(Exercise exercise) {
    return exercise.primary().stream().limit(1).anyMatch(targets::contains)
        || Stream.of(exercise.primary(), exercise.secondary())
                .flatMap(Collection::stream)
                .anyMatch(targets::contains)
            && wants.patternOf(exercise).filter(it -> share(it.id()) > 0).isPresent();
  }

  /** Whether a session for this has the legs alone. */
  boolean isForLegs() {
    return regions.equals(List.of(Region.LOWER.id()));
  }

  /** Whether all that is asked for is in the upper body. */
  boolean isForUpperBody() {
    return forUpperBody;
  }

  /** Whether the whole body is asked for. */
  boolean isWhole() {
    return regions.contains(Wants.WHOLE);
  }

  /** Whether a muscle group came with a region, not by its own name. */
  boolean cameWithRegion(Muscle muscle) {
    return regions.contains(Wants.WHOLE) || regions.contains(muscle.region().id());
  }
}
