package counterset.model;

import java.util.Set;

/**
 * A class of movements that a session wants: a squat, a row, a plank.
 *
 * @param name as a coach would say it
 * @param big whether its loaded forms are the big lifts of a session
 * @param opens whether its lifts open a session
 * @param patterns exercises whose catalogue pattern is one of these belong to it
 * @param families exercises of these families belong to it, whatever their pattern
 * @param pairs the patterns that rest best what it tires, by id
 */
public record MovementPattern(
    String id,
    String name,
    Group group,
    boolean big,
    boolean opens,
    Set<String> patterns,
    Set<String> families,
    Set<String> pairs)
    implements Identified {

  public MovementPattern {
    patterns = Ordered.set(patterns);
    families = Ordered.set(families);
    pairs = Ordered.set(pairs);
  }

  /** What part of the body it tires. */
  public enum Group implements Identified {
    /** The knees bend and stretch. */
    KNEE("knee"),
    /** The hips do. */
    HIP("hip"),
    /** A small muscle of the leg works alone. */
    SMALL_LEG("small-leg"),
    PUSH("push"),
    PULL("pull"),
    TRUNK("trunk"),
    /** The whole body moves fast. */
    POWER("power"),
    CONDITIONING("conditioning");

    private final String id;

    Group(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }

    /** Whether the legs do the work. */
    public boolean isLegs() {
      return this == KNEE || this == HIP || this == SMALL_LEG || this == POWER;
    }
  }
}
