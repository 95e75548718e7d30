package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Muscle;
import java.util.List;

/** A catalogue whose every text tries to be more than text in a page. */
final class HostileCatalogue {

  /** Ends elements, opens others, breaks out of attributes, fills templates again. */
  static final String TEXT =
      "</script></style></title><script>window.taken=1</script>"
          + "<img src=x onerror=\"window.taken=2\">'\"`&amp;{{title}}{{{title}}}<!--\u2028\u2029";

  private HostileCatalogue() {}

  /** The same catalogue with the text behind each text of its own. */
  static Catalogue of(Catalogue plain) {
    return Catalogue.of(
        plain.muscles().values().stream().map(HostileCatalogue::muscle).toList(),
        plain.equipment().values().stream().map(HostileCatalogue::equipment).toList(),
        plain.limitations().values().stream().map(HostileCatalogue::limitation).toList(),
        plain.exercises().values().stream().map(HostileCatalogue::exercise).toList());
  }

  private static String bad(String text) {
    return text + TEXT;
  }

  private static List<String> bad(List<String> texts) {
    return texts.stream().map(HostileCatalogue::bad).toList();
  }

  private static Muscle muscle(Muscle it) {
    return new Muscle(
        it.id(),
        bad(it.name()),
        it.region(),
        it.aspect(),
        it.opposes(),
        it.defaultTarget(),
        bad(it.names()));
  }

  private static Equipment equipment(Equipment it) {
    return new Equipment(
        it.id(),
        bad(it.name()),
        it.kind(),
        it.putOnSeconds(),
        it.takeOffSeconds(),
        it.support(),
        it.comfortIn(),
        bad(it.names()));
  }

  private static Limitation limitation(Limitation it) {
    return it.toBuilder()
        .name(bad(it.name()))
        .names(bad(it.names()))
        .caution(bad(it.caution()))
        .source(bad(it.source()))
        .build();
  }

  private static Exercise exercise(Exercise it) {
    return it.toBuilder()
        .name(bad(it.name()))
        .names(bad(it.names()))
        .pattern(bad(it.pattern()))
        .family(bad(it.family()))
        .demandSource(bad(it.demandSource()))
        .setup(bad(it.setup()))
        .cues(bad(it.cues()))
        .faults(bad(it.faults()))
        .build();
  }
}
