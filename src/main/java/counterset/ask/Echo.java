package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Owned;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says in plain lines how an ask was read, and what was assumed. */
final class Echo {

  private static final String ASSUMED = " (assumed)";

  private final Catalogue catalogue;
  private final AskDraft draft;
  private final Assembly assembly;

  Echo(Catalogue catalogue, AskDraft draft, Assembly assembly) {
    this.catalogue = catalogue;
    this.draft = draft;
    this.assembly = assembly;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        assembly.minutes()
            + (assembly.minutes() == 1 ? " minute" : " minutes")
            + mark(draft.minutes));
    lines.add(targets());
    lines.add(equipment());
    lines.add("limitations: " + (draft.limitations.isEmpty() ? "none named" : limitations()));
    if (!draft.tracks.isEmpty()) {
      lines.add("class: " + TrackEcho.of(draft, catalogue));
    }
    lines.add("level " + draft.level.or(2) + mark(draft.level));
    lines.addAll(new ClockEcho(draft, assembly.clock()).lines());
    if (assembly.clock().perSuperset() > 1) {
      lines.add("pairing: " + assembly.pairing().id() + mark(draft.pairing));
    }
    if (!draft.include.isEmpty()) {
      lines.add("include: " + join(draft.include.keySet(), this::name));
    }
    draft.kept.forEach(
        kept -> lines.add("keep: " + kept.keep().at() + " " + name(kept.keep().exercise())));
    list(lines, "exclude", draft.exclude.keySet());
    list(lines, "likes", draft.likes.keySet());
    list(lines, "dislikes", draft.dislikes.keySet());
    lines.add("seed " + draft.seed.or(Assembly.DEFAULT_SEED) + mark(draft.seed));
    return lines;
  }

  static String mark(Slot<?> slot) {
    return slot.isSet() ? "" : ASSUMED;
  }

  private String targets() {
    String names = assembly.targets().stream().map(this::target).collect(Collectors.joining(", "));
    List<String> notes = new ArrayList<>(draft.labels);
    if (draft.targets.isEmpty()) {
      notes.add("whole body, assumed");
    }
    if (!draft.removed.isEmpty()) {
      notes.add(
          "without "
              + draft.removed.keySet().stream()
                  .map(this::muscle)
                  .collect(Collectors.joining(", ")));
    }
    return "targets: " + names + (notes.isEmpty() ? "" : " (" + String.join("; ", notes) + ")");
  }

  private String target(Target target) {
    String text = muscle(target.muscle());
    text += target.emphasis() > 1 ? " [emphasis " + target.emphasis() + "]" : "";
    return target.minSets() == 1 ? text : text + " [at least " + target.minSets() + " sets]";
  }

  private String muscle(String id) {
    return lower(catalogue.muscles().get(id).name());
  }

  private String equipment() {
    List<String> always =
        catalogue.equipment().values().stream()
            .filter(Equipment::alwaysThere)
            .map(Equipment::name)
            .toList();
    String there = always.isEmpty() ? "" : "; always there: " + lower(String.join(", ", always));
    if (assembly.equipment().isEmpty()) {
      return "equipment: none" + (draft.noEquipment.isSet() ? "" : ASSUMED) + there;
    }
    return "equipment: " + join(assembly.equipment(), this::owned);
  }

  private String owned(Owned owned) {
    boolean graded =
        catalogue.exercises().values().stream()
            .flatMap(exercise -> exercise.needs().stream())
            .anyMatch(need -> need.equipment().equals(owned.id()) && need.load().isPresent());
    boolean special = owned.loads().size() < 3 || !owned.kg().isEmpty();
    return EquipmentText.of(catalogue.equipment().get(owned.id()), owned, graded || special);
  }

  private String limitations() {
    return join(draft.limitations.keySet(), id -> lower(catalogue.limitations().get(id).name()));
  }

  private void list(List<String> lines, String topic, Collection<String> ids) {
    if (!ids.isEmpty()) {
      lines.add(topic + ": " + join(ids, this::exercise));
    }
  }

  private String exercise(String id) {
    boolean group =
        catalogue.exercises().values().stream()
            .anyMatch(exercise -> exercise.family().equals(id) || exercise.pattern().equals(id));
    return group ? id + " (all)" : name(id);
  }

  private String name(String id) {
    return lower(catalogue.exercises().get(id).name());
  }

  private static <T> String join(Collection<T> values, Function<T, String> text) {
    return values.stream().map(text).collect(Collectors.joining(", "));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
