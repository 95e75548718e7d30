package counterset.problem;

import counterset.json.Cursor;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The modifications of a class, from the work intervals of a plan's timeline. */
final class ModificationList {

  private final Catalogue catalogue;
  private final List<String> tracks;
  private final List<PlannedSuperset> supersets;
  private final List<Map<At, String>> read = new ArrayList<>();

  /**
   * A reader for one plan.
   *
   * @param tracks those of its problem
   */
  ModificationList(Catalogue catalogue, List<Set<String>> tracks, List<PlannedSuperset> supersets) {
    this.catalogue = catalogue;
    this.tracks = tracks.stream().map(ids -> String.join("+", ids)).toList();
    this.supersets = supersets;
    tracks.forEach(ids -> read.add(new LinkedHashMap<>()));
  }

  /** By track, in the order of the problem. */
  List<Map<At, String>> read(Cursor timeline) {
    for (Cursor interval : timeline.elements()) {
      if (interval.field("modifications").isPresent()) {
        interval(interval);
      }
    }
    return read;
  }

  private void interval(Cursor interval) {
    Optional<At> at = at(interval);
    for (Cursor modification : interval.field("modifications").elements()) {
      Cursor name = modification.field("limitation");
      Cursor exercise = modification.field("exercise");
      List.of(name, exercise).stream().filter(field -> !field.isPresent()).forEach(this::missing);
      int track = track(name);
      Optional<String> id = exercise.id("exercise", catalogue.exercises().keySet());
      id.filter(value -> catalogue.exercises().get(value).part() != Part.MAIN)
          .ifPresent(
              value ->
                  exercise.fault("The exercise (" + value + ") is not made for the supersets."));
      if (at.isPresent() && track >= 0 && id.isPresent()) {
        put(track, at.get(), id.get(), exercise);
      }
    }
  }

  private void missing(Cursor field) {
    field.fault("A modification needs a limitation, whose followers it is for, and an exercise.");
  }

  private int track(Cursor name) {
    return name.text().filter(text -> name.isKnown("track", text, tracks)).isEmpty()
        ? -1
        : tracks.indexOf(name.text().orElseThrow());
  }

  /** The same track does the same at both sides and in every round. */
  private void put(int track, At at, String id, Cursor exercise) {
    String before = read.get(track).putIfAbsent(at, id);
    if (before != null && !before.equals(id)) {
      exercise.fault(
          "The exercise ("
              + id
              + ") must be ("
              + before
              + "), as at ("
              + at
              + ") before: a modification holds for both sides and all rounds.");
    }
  }

  /** The first place of the exercise of a work interval. */
  private Optional<At> at(Cursor interval) {
    Cursor list = interval.field("modifications");
    Optional<Integer> number = interval.field("superset").integer();
    Optional<At> at =
        interval
            .field("position")
            .text()
            .flatMap(letter -> number.flatMap(superset -> At.parse(superset + letter)));
    Cursor kind = interval.field("kind");
    boolean work = kind.isText() && kind.text().equals(Optional.of("work"));
    if (!work || at.isEmpty()) {
      if (list.elements().size() > 0) {
        list.fault("The modifications must be in a work interval with superset and position.");
      }
      return Optional.empty();
    }
    return Optional.of(firstSide(at.get()));
  }

  private At firstSide(At at) {
    return supersets.stream()
        .filter(superset -> superset.number() == at.superset())
        .map(PlannedSuperset::exercises)
        .filter(ids -> at.position() < ids.size())
        .map(ids -> ids.get(at.position()))
        .filter(id -> catalogue.exercises().get(id).isUnilateral())
        .map(id -> supersets.get(at.superset() - 1).exercises().indexOf(id))
        .map(position -> new At(at.superset(), position))
        .findFirst()
        .orElse(at);
  }
}
