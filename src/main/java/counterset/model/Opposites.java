package counterset.model;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Tells what the exercises of a superset are to each other.
 *
 * <p>Antagonists oppose each other in the same joint action (Neumann, Kinesiology of the Musculoskeletal System, 3rd ed.,
 * from memory). Knee-dominant and hip-dominant work shares muscles that cross both joints, so a squat and a bridge are
 * opposite regions but never antagonists.
 */
public final class Opposites {

  private static final Set<String> KNEE_DOMINANT = Set.of("squat", "lunge", "step", "knee-extension");
  private static final Set<String> HIP_DOMINANT = Set.of("hinge", "bridge", "hip-extension");
  private static final Set<String> HEAVY_KNEE_DOMINANT = Set.of("squat", "lunge", "step");

  private final Map<String, Muscle> muscles;

  /** Works with the muscle groups of a catalogue. */
  public Opposites(Catalogue catalogue) {
    this.muscles = catalogue.muscles();
  }

  /**
   * The kind of a superset. With three positions the weakest link of its neighbours counts.
   *
   * @param exercises by position
   */
  public SupersetKind kind(List<Exercise> exercises) {
    if (exercises.size() < 2) {
      return SupersetKind.MIXED;
    }
    return IntStream.range(1, exercises.size())
        .mapToObj(i -> kind(exercises.get(i - 1), exercises.get(i)))
        .max(Enum::compareTo)
        .orElseThrow();
  }

  /** The kind of two exercises done back to back. */
  public SupersetKind kind(Exercise first, Exercise second) {
    if (first.id().equals(second.id())) {
      return first.isUnilateral() ? SupersetKind.UNILATERAL : SupersetKind.COMPOUND;
    }
    if (!Collections.disjoint(first.primary(), second.primary())) {
      return SupersetKind.COMPOUND;
    }
    if (areAntagonists(first, second)) {
      return SupersetKind.AGONIST_ANTAGONIST;
    }
    return areOppositeRegions(first, second) ? SupersetKind.OPPOSITE_REGION : SupersetKind.MIXED;
  }

  private boolean areAntagonists(Exercise first, Exercise second) {
    return Collections.disjoint(first.primary(), second.secondary())
        && Collections.disjoint(first.secondary(), second.primary())
        && !(matches(first, HEAVY_KNEE_DOMINANT, second, HIP_DOMINANT))
        && first.primary().stream()
            .anyMatch(muscle -> !Collections.disjoint(muscles.get(muscle).opposes(), second.primary()));
  }

  private boolean areOppositeRegions(Exercise first, Exercise second) {
    Set<Region> here = regions(first);
    Set<Region> there = regions(second);
    boolean upperWithLower =
        here.equals(Set.of(Region.UPPER)) && there.equals(Set.of(Region.LOWER))
            || here.equals(Set.of(Region.LOWER)) && there.equals(Set.of(Region.UPPER));
    return upperWithLower
        || here.size() == 1 && here.equals(there) && frontWithBack(first, second)
        || matches(first, KNEE_DOMINANT, second, HIP_DOMINANT);
  }

  private boolean frontWithBack(Exercise first, Exercise second) {
    Set<Aspect> here = aspects(first);
    Set<Aspect> there = aspects(second);
    return here.equals(Set.of(Aspect.FRONT)) && there.equals(Set.of(Aspect.BACK))
        || here.equals(Set.of(Aspect.BACK)) && there.equals(Set.of(Aspect.FRONT));
  }

  private static boolean matches(Exercise first, Set<String> some, Exercise second, Set<String> others) {
    return some.contains(first.pattern()) && others.contains(second.pattern())
        || others.contains(first.pattern()) && some.contains(second.pattern());
  }

  private Set<Region> regions(Exercise exercise) {
    return exercise.primary().stream().map(muscle -> muscles.get(muscle).region()).collect(Collectors.toSet());
  }

  private Set<Aspect> aspects(Exercise exercise) {
    return exercise.primary().stream().map(muscle -> muscles.get(muscle).aspect()).collect(Collectors.toSet());
  }
}
