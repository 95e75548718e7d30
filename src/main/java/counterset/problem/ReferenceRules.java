package counterset.problem;

import counterset.json.Cursor;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whatever a problem names must exist, and be named once. */
final class ReferenceRules {

  private final Catalogue catalogue;
  private final Set<String> constraintIds;
  private final Set<String> groups = new LinkedHashSet<>();

  ReferenceRules(Catalogue catalogue, Set<String> constraintIds) {
    this.catalogue = catalogue;
    this.constraintIds = constraintIds;
    for (Exercise exercise : catalogue.exercises().values()) {
      groups.add(exercise.id());
      groups.add(exercise.family());
      groups.add(exercise.pattern());
    }
  }

  void check(Cursor problem) {
    equipment(problem.field("equipment"));
    problem.field("limitations").elements().forEach(this::limitation);
    tracks(problem.field("tracks"), Set.copyOf(problem.field("limitations").texts()));
    for (String list : List.of("exclude", "likes", "dislikes")) {
      problem
          .field(list)
          .elements()
          .forEach(name -> name.id("exercise, family or pattern", groups));
    }
    contradiction(problem.field("likes").texts(), problem.field("dislikes"));
    dates(problem);
    problem.field("weights").entries().forEach(this::weight);
  }

  /**
   * Two light ones and a single heavy one of the same kind are two entries; the same count is one.
   */
  private void equipment(Cursor list) {
    Set<String> seen = new HashSet<>();
    for (Cursor entry : list.elements()) {
      Cursor at = entry.field("id");
      Optional<String> id = at.id("equipment", catalogue.equipment().keySet());
      int count = entry.field("count").integer().orElse(1);
      if (id.isPresent() && !seen.add(count + " " + id.get())) {
        at.fault(
            "The equipment (" + id.get() + ") is listed twice; write one entry with count and kg.");
      }
    }
  }

  private void limitation(Cursor name) {
    name.id("limitation", catalogue.limitations().keySet());
  }

  private void tracks(Cursor list, Set<String> limitations) {
    Set<Set<String>> seen = new HashSet<>();
    for (Cursor track : list.elements()) {
      List<Cursor> names = names(track);
      names.forEach(this::limitation);
      Set<String> ids = new LinkedHashSet<>();
      names.forEach(name -> name.text().ifPresent(ids::add));
      if (!ids.isEmpty() && !seen.add(ids)) {
        track.fault("The track (" + String.join(", ", ids) + ") is listed twice; keep one.");
      } else if (!ids.isEmpty() && limitations.containsAll(ids)) {
        track.fault(
            "The track ("
                + String.join(", ", ids)
                + ") needs no modification: that binds the whole session already (limitations)."
                + " Keep one of the two.");
      }
    }
  }

  static List<Cursor> names(Cursor track) {
    return track.isText() ? List.of(track) : track.elements();
  }

  private static void contradiction(List<String> likes, Cursor dislikes) {
    for (Cursor name : dislikes.elements()) {
      name.text()
          .filter(likes::contains)
          .ifPresent(
              id ->
                  name.fault("The likes name (" + id + ") as well; it cannot be both, keep one."));
    }
  }

  private void dates(Cursor problem) {
    Optional<LocalDate> session = date(problem.field("date"));
    for (Cursor done : problem.field("recent").elements()) {
      Optional<LocalDate> date = date(done.field("date"));
      if (session.isPresent() && date.isPresent() && date.get().isAfter(session.get())) {
        done.field("date")
            .fault(
                "The date ("
                    + date.get()
                    + ") is after the session's own ("
                    + session.get()
                    + ").");
      }
      done.field("exercises")
          .elements()
          .forEach(name -> name.id("exercise", catalogue.exercises().keySet()));
    }
  }

  private static Optional<LocalDate> date(Cursor at) {
    try {
      return at.text().map(LocalDate::parse);
    } catch (DateTimeException e) {
      at.fault("The date (" + at.text().orElse("") + ") is not in the calendar.");
      return Optional.empty();
    }
  }

  private void weight(String id, Cursor weight) {
    weight.isKnown("constraint", id, constraintIds);
  }
}
