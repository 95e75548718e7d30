package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.Muscle;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Opposition is symmetric, and no muscle group opposes itself. */
final class MuscleRules {

  private MuscleRules() {}

  static void check(List<Sheet<Muscle>> sheets, Set<String> known) {
    Map<String, Muscle> written = new HashMap<>();
    sheets.forEach(sheet -> sheet.values().forEach(muscle -> written.put(muscle.id(), muscle)));
    for (Sheet<Muscle> sheet : sheets) {
      for (Entry<Muscle> entry : sheet.entries()) {
        entry
            .at("opposes")
            .elements()
            .forEach(element -> check(entry.value().id(), element, written, known));
      }
    }
  }

  private static void check(
      String id, Cursor element, Map<String, Muscle> written, Set<String> known) {
    Optional<String> other = element.id("muscle", known);
    if (other.isEmpty()) {
      return;
    }
    Muscle opposed = written.get(other.get());
    if (other.get().equals(id)) {
      element.fault("The muscle (" + id + ") must not oppose itself.");
    } else if (opposed != null && !opposed.opposes().contains(id)) {
      element.fault(
          "The muscle ("
              + other.get()
              + ") does not oppose ("
              + id
              + ") in turn; name each in the other.");
    }
  }
}
