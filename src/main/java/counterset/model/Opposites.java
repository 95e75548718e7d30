package counterset.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Tells what the exercises of a superset are to each other.
 *
 * <p>Antagonists oppose each other in the same joint action (Neumann, Kinesiology of the
 * Musculoskeletal System, 3rd ed., from memory). Knee-dominant and hip-dominant work shares muscles
 * that cross both joints, so a squat and a bridge are opposite regions but never antagonists. Two
 * pulls, or two pushes, oppose each other in nothing, even with the main muscle group of one before
 * the shoulder and that of the other behind it (common practice, no source).
 */
public final class Opposites {

  private static final Set<String> KNEE_DOMINANT =
      Set.of("squat", "lunge", "step", "knee-extension");
  private static final Set<String> HEAVY_KNEE_DOMINANT = Set.of("squat", "lunge", "step");
  private static final Set<String> HIP_DOMINANT = Set.of("hinge", "bridge", "hip-extension");

  private static final Set<String> SAME_ACTION = Set.of("pull", "push");

  private final Map<String, Muscle> muscles;
  private final List<String> order;

  /** Works with the muscle groups of a catalogue. */
  public Opposites(Catalogue catalogue) {
    this.muscles = catalogue.muscles();
    this.order = new ArrayList<>(muscles.keySet());
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
    return profile(first).kindWith(profile(second));
  }

  /** What matters of an exercise here, worked out once for those who ask often. */
  public Profile profile(Exercise exercise) {
    String main = exercise.primary().iterator().next();
    return new Profile(
        exercise,
        bits(exercise.primary(), order::indexOf),
        bits(exercise.secondary(), order::indexOf),
        1L << order.indexOf(main),
        bits(muscles.get(main).opposes(), order::indexOf),
        bits(exercise.primary(), muscle -> muscles.get(muscle).region().ordinal()),
        bits(exercise.primary(), muscle -> muscles.get(muscle).aspect().ordinal()));
  }

  private static long bits(Set<String> muscles, Function<String, Integer> bit) {
    long bits = 0;
    for (String muscle : muscles) {
      bits |= 1L << bit.apply(muscle);
    }
    return bits;
  }

  /**
   * An exercise as this class sees it; sets are bits.
   *
   * @param main its first primary muscle group, the one that the joint action is named by
   * @param opposed the muscle groups that oppose the main one
   */
  public record Profile(
      Exercise exercise,
      long primary,
      long secondary,
      long main,
      long opposed,
      long regions,
      long aspects) {

    private static final long UPPER = 1L << Region.UPPER.ordinal();
    private static final long LOWER = 1L << Region.LOWER.ordinal();
    private static final long FRONT = 1L << Aspect.FRONT.ordinal();
    private static final long BACK = 1L << Aspect.BACK.ordinal();

    /** The kind of this exercise and one done straight after it. */
    public SupersetKind kindWith(Profile next) {
      if (exercise.id().equals(next.exercise.id())) {
        return exercise.isUnilateral() ? SupersetKind.UNILATERAL : SupersetKind.COMPOUND;
      }
      if ((primary & next.primary) != 0) {
        return SupersetKind.COMPOUND;
      }
      if (isAntagonistOf(next)) {
        return SupersetKind.AGONIST_ANTAGONIST;
      }
      return isOppositeRegionOf(next) ? SupersetKind.OPPOSITE_REGION : SupersetKind.MIXED;
    }

    private boolean isAntagonistOf(Profile next) {
      return (opposed & next.main) != 0
          && (primary & next.secondary) == 0
          && (secondary & next.primary) == 0
          && !matches(next, HEAVY_KNEE_DOMINANT, HIP_DOMINANT)
          && !isSameActionAs(next);
    }

    /** Whether both pull or both push, whatever muscle group each is named by. */
    private boolean isSameActionAs(Profile next) {
      return SAME_ACTION.contains(exercise.pattern())
          && exercise.pattern().equals(next.exercise.pattern());
    }

    private boolean isOppositeRegionOf(Profile next) {
      boolean upperWithLower =
          regions == UPPER && next.regions == LOWER || regions == LOWER && next.regions == UPPER;
      boolean frontWithBack =
          aspects == FRONT && next.aspects == BACK || aspects == BACK && next.aspects == FRONT;
      boolean sameSegment = regions == next.regions && Long.bitCount(regions) == 1;
      return upperWithLower
          || sameSegment && frontWithBack && !isSameActionAs(next)
          || matches(next, KNEE_DOMINANT, HIP_DOMINANT);
    }

    private boolean matches(Profile next, Set<String> some, Set<String> others) {
      String here = exercise.pattern();
      String there = next.exercise.pattern();
      return some.contains(here) && others.contains(there)
          || others.contains(here) && some.contains(there);
    }
  }
}
