package counterset.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One way of doing one exercise.
 *
 * @param names further words that a coach may use for it
 * @param pattern the movement pattern
 * @param family exercises that feel like the same move
 * @param variantOf the exercise that this is another way of doing
 * @param intensity 1 (small, single-joint) to 3 (heavy, multi-joint): the order of work within a
 *     session
 * @param level 1 (anyone) to 3 (skilled)
 * @param standing how well known it is: 3 a staple of the trade, 2 known, 1 a last resort
 * @param standingSources the lists that name it or its plain form, by code
 * @param primary the muscle groups trained first, by id, that which works hardest before the
 *     others; never empty
 * @param secondary the muscle groups that help, by id
 * @param allowsWorn worn equipment that may stay on although it is not needed, by id
 * @param demand joint demand, 0 to 3; a joint that is not named has 0
 * @param traits what limitations look at
 * @param seconds the length of its interval where it has one of its own (warm-up and cool-down)
 * @param setup one sentence on how to get ready
 * @param figure the id of the figure that shows it
 */
public record Exercise(
    String id,
    String name,
    List<String> names,
    Part part,
    String pattern,
    String family,
    Optional<String> variantOf,
    boolean multiJoint,
    int intensity,
    int level,
    int standing,
    List<String> standingSources,
    Set<String> primary,
    Set<String> secondary,
    Sides sides,
    Position position,
    List<Need> needs,
    Set<String> allowsWorn,
    Map<Joint, Integer> demand,
    String demandSource,
    Set<String> traits,
    Met met,
    OptionalInt seconds,
    String setup,
    List<String> cues,
    List<String> faults,
    Optional<String> figure) {

  /** The standing of an exercise about which nothing is said. */
  public static final int KNOWN = 2;

  /** The standing of what the trade knows best. */
  public static final int STAPLE = 3;

  /** The standing of an exercise that is done only where nothing better is left. */
  public static final int LAST_RESORT = 1;

  public Exercise {
    names = List.copyOf(names);
    standingSources = List.copyOf(standingSources);
    primary = Ordered.set(primary);
    secondary = Ordered.set(secondary);
    needs = List.copyOf(needs);
    allowsWorn = Ordered.set(allowsWorn);
    demand = Ordered.map(demand);
    traits = Ordered.set(traits);
    cues = List.copyOf(cues);
    faults = List.copyOf(faults);
    if (primary.isEmpty()) {
      throw new IllegalArgumentException(
          "The exercise (" + id + ") must train at least one primary muscle group.");
    }
  }

  /** An exercise to be made. */
  public static ExerciseBuilder builder() {
    return new ExerciseBuilder();
  }

  /** The same exercise, to be changed. */
  public ExerciseBuilder toBuilder() {
    return new ExerciseBuilder(this);
  }

  /** The id that all variants of this exercise share. */
  public String root() {
    return variantOf.orElse(id);
  }

  /** Joint demand, 0 to 3. */
  public int demandOn(Joint joint) {
    return demand.getOrDefault(joint, 0);
  }

  /**
   * Whether one side is trained for a whole interval, so that the other side needs an interval of
   * its own.
   */
  public boolean isUnilateral() {
    return sides == Sides.UNILATERAL;
  }
}
