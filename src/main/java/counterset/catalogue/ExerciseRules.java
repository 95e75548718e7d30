package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Part;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an exercise must agree with: the other files, its base exercise, and itself.
 *
 * @param muscleIds all ids, also of values that have faults of their own; the maps lack those
 * @param traits the traits that may be used; empty where any may
 */
record ExerciseRules(
    Set<String> muscleIds,
    Set<String> equipmentIds,
    Map<String, Equipment> equipment,
    Set<String> exerciseIds,
    Map<String, Exercise> exercises,
    Optional<Set<String>> traits) {

  private static final int HANDS = 2;

  void check(Entry<Exercise> entry) {
    Integrity.known(entry, "primary", "muscle", muscleIds);
    Integrity.known(entry, "secondary", "muscle", muscleIds);
    traits.ifPresent(known -> Integrity.known(entry, "traits", "trait", known));
    disjoint(entry);
    part(entry);
    needs(entry);
    entry.at("allowsWorn").elements().forEach(element -> allowed(entry.value(), element));
    entry.at("variantOf").id("exercise", exerciseIds).ifPresent(base -> variant(entry, base));
  }

  private static void disjoint(Entry<Exercise> entry) {
    for (Cursor element : entry.at("secondary").elements()) {
      element
          .text()
          .filter(entry.value().primary()::contains)
          .ifPresent(
              id -> element.fault("The muscle (" + id + ") is primary as well; name it once."));
    }
  }

  private static void part(Entry<Exercise> entry) {
    Exercise exercise = entry.value();
    boolean main = exercise.part() == Part.MAIN;
    String called =
        "The exercise (" + exercise.id() + ") of the part (" + exercise.part().id() + ")";
    if (main && exercise.seconds().isPresent()) {
      entry
          .at("seconds")
          .fault(called + " must not have seconds; it takes the work interval of the session.");
    }
    if (!main && exercise.seconds().isEmpty()) {
      entry.at("seconds").fault(called + " must have seconds, the length of its interval.");
    }
    if (exercise.part() == Part.WARM_UP && exercise.isUnilateral()) {
      entry.at("sides").fault(called + " must not be unilateral; make it alternating.");
    }
  }

  private void needs(Entry<Exercise> entry) {
    Set<String> seen = new HashSet<>();
    for (Cursor need : entry.at("needs").elements()) {
      Cursor at = need.field("equipment");
      Optional<String> id = at.id("equipment", equipmentIds);
      if (id.isPresent() && !seen.add(id.get())) {
        at.fault("The equipment (" + id.get() + ") is needed twice; write one need with a count.");
      }
      id.map(equipment::get).ifPresent(item -> need(need, item));
    }
  }

  private static void need(Cursor need, Equipment item) {
    boolean loaded = item.kind() == EquipmentKind.HELD || item.kind() == EquipmentKind.WORN;
    int count = need.field("count").integer().orElse(1);
    if (need.field("load").isPresent() && !loaded) {
      need.field("load")
          .fault(
              "A load makes no sense for ("
                  + item.id()
                  + "), which is "
                  + item.kind().id()
                  + "; leave it out.");
    }
    if (item.kind() == EquipmentKind.HELD && count > HANDS) {
      need.field("count")
          .fault(
              "The count (" + count + ") of (" + item.id() + ") is more than two hands can hold.");
    }
    if (item.alwaysThere() && count > 1) {
      need.field("count")
          .fault("The count (" + count + ") of fixed equipment (" + item.id() + ") must be 1.");
    }
  }

  private void allowed(Exercise exercise, Cursor element) {
    Optional<String> id = element.id("equipment", equipmentIds);
    if (id.isPresent()
        && exercise.needs().stream().anyMatch(need -> need.equipment().equals(id.get()))) {
      element.fault(
          "The equipment ("
              + id.get()
              + ") is needed, so it need not be allowed; leave it out here.");
    }
    id.map(equipment::get)
        .filter(item -> item.kind() != EquipmentKind.WORN)
        .ifPresent(
            item ->
                element.fault(
                    "The equipment (" + item.id() + ") is " + item.kind().id() + ", not worn."));
  }

  private void variant(Entry<Exercise> entry, String baseId) {
    Exercise exercise = entry.value();
    Exercise base = exercises.get(baseId);
    Cursor at = entry.at("variantOf");
    if (baseId.equals(exercise.id())) {
      at.fault("The exercise (" + baseId + ") must not be a variant of itself.");
    } else if (base != null && base.variantOf().isPresent()) {
      at.fault(
          "The exercise ("
              + baseId
              + ") is a variant itself; name its base ("
              + base.variantOf().get()
              + ") instead.");
    } else if (base != null && !base.family().equals(exercise.family())) {
      at.fault(
          "The exercise ("
              + baseId
              + ") is of another family ("
              + base.family()
              + ", here "
              + exercise.family()
              + ")"
              + "; a variant shares the family of its base.");
    }
  }
}
