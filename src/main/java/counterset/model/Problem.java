package counterset.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a session is asked to be, complete: every default filled in, every reference checked.
 *
 * @param minutes the cap of the whole session
 * @param targets the muscle groups to cover, regions already spelled out; never empty
 * @param limitations ids that bind the whole session
 * @param tracks per group of followers, the ids of the limitations that each of them has
 * @param level 1 to 3; no exercise above it is used
 * @param include exercises that must be somewhere in the session, by id
 * @param exclude exercises, families or patterns that must not
 * @param likes exercises, families or patterns that are welcome
 * @param dislikes exercises, families or patterns that are not
 * @param weights constraint weights that differ from the default, by constraint id
 * @param date the day of the session; without it, the day after the last of {@code recent}
 */
public record Problem(
    String title,
    int minutes,
    Intervals clock,
    List<Target> targets,
    List<Owned> equipment,
    Set<String> limitations,
    List<Set<String>> tracks,
    int level,
    Pairing pairing,
    Set<String> include,
    Set<String> exclude,
    List<Keep> keep,
    Set<String> likes,
    Set<String> dislikes,
    List<Done> recent,
    Optional<LocalDate> date,
    Map<String, Integer> weights,
    long seed) {

  /** The minutes of a session when the coach names none. */
  public static final int DEFAULT_MINUTES = 20;

  /** The level of a client when the coach names none: someone who trains regularly. */
  public static final int DEFAULT_LEVEL = 2;

  public Problem {
    if (minutes < 1) {
      throw new IllegalArgumentException(
          "The minutes (" + minutes + ") of a session must be at least 1.");
    }
    if (targets.isEmpty()) {
      throw new IllegalArgumentException("A session needs at least one target.");
    }
    if (level < 1 || level > 3) {
      throw new IllegalArgumentException("The level (" + level + ") must be 1, 2 or 3.");
    }
    targets = List.copyOf(targets);
    equipment = List.copyOf(equipment);
    limitations = Ordered.set(limitations);
    tracks = tracks.stream().map(Ordered::set).toList();
    include = Ordered.set(include);
    exclude = Ordered.set(exclude);
    keep = List.copyOf(keep);
    likes = Ordered.set(likes);
    dislikes = Ordered.set(dislikes);
    recent = List.copyOf(recent);
    weights = Ordered.map(weights);
  }

  /** A problem to be made. */
  public static ProblemBuilder builder() {
    return new ProblemBuilder();
  }

  /** The same problem, to be changed. */
  public ProblemBuilder toBuilder() {
    return new ProblemBuilder(this);
  }

  /** The same problem with another seed. */
  public Problem withSeed(long other) {
    return toBuilder().seed(other).build();
  }

  /** The same problem on another day, after other sessions. */
  public Problem after(List<Done> others, Optional<LocalDate> day) {
    return toBuilder().recent(others).date(day).build();
  }

  /** The same problem with other places kept. */
  public Problem keeping(List<Keep> kept) {
    return toBuilder().keep(kept).build();
  }

  /**
   * Whether a list of exercises, families and patterns names the exercise; a base exercise names
   * its variants.
   */
  public static boolean names(Set<String> list, Exercise exercise) {
    return list.contains(exercise.id())
        || list.contains(exercise.root())
        || list.contains(exercise.family())
        || list.contains(exercise.pattern());
  }
}
