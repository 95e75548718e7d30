package counterset.report.html;

import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The pictures of an exercise that a clock shows.
 *
 * @param id of the exercise
 * @param still SVG; empty text if there is none
 * @param moving SVG; empty text if there is none
 */
record Picture(String id, String still, String moving) {

  /** One for each exercise that somebody does and that has a picture. */
  static List<Picture> of(Plan plan, Pictures pictures) {
    Map<String, Exercise> exercises = new LinkedHashMap<>();
    Stream.concat(Stream.of(plan), plan.tracks().stream().map(Track::plan))
        .flatMap(it -> it.timeline().stream())
        .map(Interval::exercise)
        .forEach(it -> it.ifPresent(exercise -> exercises.putIfAbsent(exercise.id(), exercise)));
    return exercises.values().stream()
        .map(
            it ->
                new Picture(it.id(), pictures.still(it).orElse(""), pictures.moving(it).orElse("")))
        .filter(it -> !it.still().isEmpty() || !it.moving().isEmpty())
        .toList();
  }
}
