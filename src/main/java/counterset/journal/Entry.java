package counterset.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One session that was done.
 *
 * @param minutes its length from the warm-up to the end of the cool-down, rests included, at least
 *     1
 * @param rpe how hard the whole session felt, 0 to 10 in steps of 0.5, on Foster's CR-10 scale
 *     (Foster 2001)
 * @param mass the body mass of the client, in kilograms
 * @param exercises the main exercises in the order of their first set
 * @param loads the sets of which load and repetitions are known
 * @param muscles every muscle group that was trained
 * @param energy by part of the session
 */
public record Entry(
    LocalDate date,
    String title,
    int minutes,
    double rpe,
    Optional<String> note,
    OptionalDouble mass,
    List<ExerciseSets> exercises,
    List<Lift> loads,
    List<MuscleSets> muscles,
    List<EnergyBlock> energy) {

  public Entry {
    if (minutes < 1 || rpe < 0 || rpe > 10) {
      throw new IllegalArgumentException(
          "An entry has at least 1 minute (" + minutes + ") and an RPE of 0 to 10 (" + rpe + ").");
    }
    exercises = List.copyOf(exercises);
    loads = List.copyOf(loads);
    muscles = List.copyOf(muscles);
    energy = List.copyOf(energy);
  }

  /** An entry to be made. */
  public static EntryBuilder builder() {
    return new EntryBuilder();
  }

  /** The same entry, to be changed. */
  public EntryBuilder toBuilder() {
    return new EntryBuilder(this);
  }

  /** The sets of one exercise whose load is known, in the order done. */
  public List<Lift> loads(String exercise) {
    return loads.stream().filter(lift -> lift.exercise().equals(exercise)).toList();
  }
}
