package counterset.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * All that is known of the trade: muscle groups, equipment, limitations and exercises by id, in the
 * order of the files.
 *
 * <p>References between them have been checked by whoever built it.
 */
public record Catalogue(
    Map<String, Muscle> muscles,
    Map<String, Equipment> equipment,
    Map<String, Limitation> limitations,
    Map<String, Exercise> exercises,
    Wants wants) {

  public Catalogue {
    muscles = Ordered.map(muscles);
    equipment = Ordered.map(equipment);
    limitations = Ordered.map(limitations);
    exercises = Ordered.map(exercises);
  }

  /** Joins lists whose ids are unique; sessions want no movement patterns. */
  public static Catalogue of(
      List<Muscle> muscles,
      List<Equipment> equipment,
      List<Limitation> limitations,
      List<Exercise> exercises) {
    return of(muscles, equipment, limitations, exercises, Wants.NOTHING);
  }

  /** Joins lists whose ids are unique. */
  public static Catalogue of(
      List<Muscle> muscles,
      List<Equipment> equipment,
      List<Limitation> limitations,
      List<Exercise> exercises,
      Wants wants) {
    return new Catalogue(
        byId(muscles, Muscle::id),
        byId(equipment, Equipment::id),
        byId(limitations, Limitation::id),
        byId(exercises, Exercise::id),
        wants);
  }

  /** The exercises made for one part of a session. */
  public List<Exercise> exercises(Part part) {
    return exercises.values().stream().filter(exercise -> exercise.part() == part).toList();
  }

  private static <T> Map<String, T> byId(List<T> values, Function<T, String> id) {
    Map<String, T> map = new LinkedHashMap<>();
    for (T value : values) {
      if (map.put(id.apply(value), value) != null) {
        throw new IllegalArgumentException("The id (" + id.apply(value) + ") is used twice.");
      }
    }
    return map;
  }
}
