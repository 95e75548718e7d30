package counterset.referee;

import counterset.model.Exercise;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One way to fill a superset, for one set of items already in use.
 *
 * @param places its exercises by position, null for a hole; a one-sided one stands in both
 * @param points what it earns by itself, often below 0
 * @param floorTrips times that one goes down to the floor in it, all rounds
 */
record Filling(List<Choice> places, Entry entry, Exit exit, int points, int floorTrips) {

  /** What stands in each position, null for a hole. */
  List<Exercise> exercises() {
    List<Exercise> exercises = new ArrayList<>();
    places.forEach(choice -> exercises.add(choice == null ? null : choice.exercise()));
    return exercises;
  }

  boolean isFull() {
    return places.stream().noneMatch(Objects::isNull);
  }

  boolean isOneSided() {
    return places.get(0) != null && places.get(0).oneSided();
  }

  /** Its exercises in order, one that stands on both sides once. */
  List<Choice> occurrences() {
    return places.stream().filter(Objects::nonNull).distinct().toList();
  }
}
