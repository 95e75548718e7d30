package counterset.problem;

import counterset.json.Cursor;
import counterset.model.Catalogue;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a week file names beside its sessions must exist and agree. */
final class WeekRules {

  private final Catalogue catalogue;
  private final Set<String> constraintIds;

  WeekRules(Catalogue catalogue, Set<String> constraintIds) {
    this.catalogue = catalogue;
    this.constraintIds = constraintIds;
  }

  void check(Cursor week) {
    Set<String> days = new HashSet<>();
    for (Cursor session : week.field("sessions").elements()) {
      Cursor day = session.field("day");
      Optional<String> name = day.text();
      if (name.isPresent() && !days.add(name.get())) {
        day.fault("The day (" + name.get() + ") has a session already; a day has at most one.");
      }
    }
    earlier(week.field("earlier"));
    week.field("setRanges").entries().forEach(this::range);
    week.field("weights")
        .entries()
        .forEach((id, weight) -> weight.isKnown("constraint of a week", id, constraintIds));
  }

  private void earlier(Cursor list) {
    int before = Integer.MAX_VALUE;
    for (Cursor session : list.elements()) {
      session
          .field("exercises")
          .elements()
          .forEach(name -> name.id("exercise", catalogue.exercises().keySet()));
      session.field("directSets").entries().forEach(this::muscle);
      int days = session.field("daysBeforeMonday").integer().orElse(before);
      if (days > before) {
        session
            .field("daysBeforeMonday")
            .fault("The daysBeforeMonday (" + days + ") must not grow: the latest comes last.");
      }
      before = days;
    }
  }

  private void muscle(String id, Cursor value) {
    value.isKnown("muscle", id, catalogue.muscles().keySet());
  }

  private void range(String id, Cursor range) {
    muscle(id, range);
    List<Cursor> ends = List.of(range.field("least"), range.field("most"));
    Optional<Integer> least = ends.get(0).integer();
    Optional<Integer> most = ends.get(1).integer();
    if (least.isPresent() && most.isPresent() && least.get() > most.get()) {
      ends.get(1)
          .fault(
              "The most ("
                  + most.get()
                  + ") must not be below the least ("
                  + least.get()
                  + "); swap them or raise it.");
    }
  }
}
