package counterset.typed;

import counterset.model.Catalogue;
import counterset.model.EquipmentKind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What is strapped on while the lines go by: "ankle weights on". Lives for one reading. */
final class Wearing {

  private final Catalogue catalogue;
  private final Report report;
  private final Set<String> worn = new LinkedHashSet<>();

  Wearing(Catalogue catalogue, Report report) {
    this.catalogue = catalogue;
    this.report = report;
  }

  /** What is strapped on by now, by id. */
  Set<String> now() {
    return worn;
  }

  /** Whether a line says that something is strapped on, or taken off; empty if neither. */
  Optional<Boolean> read(List<Segment> all, Source source) {
    List<Word> words = all.stream().flatMap(segment -> segment.words().stream()).toList();
    List<Word> others = words.stream().filter(word -> word.equipment().isEmpty()).toList();
    boolean named =
        words.stream().anyMatch(word -> word.equipment().stream().anyMatch(this::isWorn));
    boolean plain =
        others.stream()
            .allMatch(
                word ->
                    Set.of("off", "put", "strap", "take", "remove", "now").contains(word.key()));
    if (!named || !plain) {
      return Optional.empty();
    }
    boolean off = others.stream().anyMatch(word -> Set.of("off", "remove").contains(word.key()));
    boolean on = source.text().matches("(?i).*\\bon\\b.*") || !others.isEmpty();
    return off ? Optional.of(false) : on ? Optional.of(true) : Optional.empty();
  }

  private boolean isWorn(String id) {
    return catalogue.equipment().get(id).kind() == EquipmentKind.WORN;
  }

  /** Takes a line that says so. */
  void take(List<Segment> all, boolean on, Source source) {
    Set<String> ids = new LinkedHashSet<>();
    for (Segment segment : all) {
      segment
          .words()
          .forEach(word -> word.equipment().stream().filter(this::isWorn).forEach(ids::add));
    }
    if (on) {
      worn.addAll(ids);
    } else {
      worn.removeAll(ids);
    }
    report.taken(
        source,
        source.first(),
        source.text().length(),
        String.join(
                " and ",
                ids.stream()
                    .map(id -> catalogue.equipment().get(id).name().toLowerCase(Locale.ROOT))
                    .toList())
            + (on ? " on, from here" : " off, from here"));
  }
}
