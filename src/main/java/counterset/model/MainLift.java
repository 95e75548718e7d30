package counterset.model;

import java.util.Set;

/**
 * A kind of heavy work that no session for its muscle groups should do without.
 *
 * <p>Iversen et al. 2021 (Sports Medicine 51:2079-2095) ask for at least one leg-press-type
 * exercise, one upper-body pull and one upper-body push. That hip-dominant work joins them is
 * common practice, no source.
 */
public enum MainLift implements Identified {
  KNEE("knee", Set.of("quadriceps"), Set.of("squat", "lunge", "step")),
  HIP("hip", Set.of("gluteus-maximus", "hamstrings"), Set.of("hinge", "bridge")),
  PUSH("push", Set.of("chest"), Set.of("push")),
  PULL("pull", Set.of("upper-back", "lats"), Set.of("pull"));

  private static final int MODERATE = 2;

  private final String id;
  private final Set<String> muscles;
  private final Set<String> patterns;

  MainLift(String id, Set<String> muscles, Set<String> patterns) {
    this.id = id;
    this.muscles = muscles;
    this.patterns = patterns;
  }

  @Override
  public String id() {
    return id;
  }

  /**
   * Whether an exercise is one for a problem: of its movement patterns, at least of moderate
   * intensity, and training one of its muscle groups first that is a target.
   */
  public boolean isDoneBy(Exercise exercise, Problem problem) {
    return exercise.intensity() >= MODERATE
        && patterns.contains(exercise.pattern())
        && problem.targets().stream()
            .map(Target::muscle)
            .anyMatch(target -> muscles.contains(target) && exercise.primary().contains(target));
  }
}
