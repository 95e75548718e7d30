package counterset.report.text;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Exercises of the catalogue as text. */
public final class CatalogueSheet {

  private CatalogueSheet() {}

  /** One line an exercise. */
  public static String list(List<Exercise> exercises) {
    return exercises.stream().map(it -> line(it) + "\n").collect(Collectors.joining());
  }

  private static String line(Exercise exercise) {
    String needs =
        exercise.needs().stream().map(CatalogueSheet::counted).collect(Collectors.joining(", "));
    return String.format(
            Locale.ROOT,
            "%-36s %-11s %-11s L%d  %-32s %s",
            exercise.id(),
            exercise.position().id(),
            exercise.sides().id(),
            exercise.level(),
            String.join(", ", exercise.primary()),
            needs)
        .stripTrailing();
  }

  private static String counted(Need need) {
    String count = need.count() == 1 ? "" : need.count() + " x ";
    return count + need.equipment() + need.load().map(load -> " (" + load.id() + ")").orElse("");
  }

  /** All that is known of one exercise. */
  public static String of(Exercise exercise, Catalogue catalogue) {
    StringBuilder text = new StringBuilder(exercise.name() + "\n" + exercise.setup() + "\n");
    exercise.cues().forEach(cue -> text.append("  - " + cue + "\n"));
    exercise.faults().forEach(fault -> text.append("  ! " + fault + "\n"));
    row(text, "part", exercise.part().id());
    row(text, "pattern, family", exercise.pattern() + ", " + exercise.family());
    row(text, "variant of", exercise.variantOf().orElse("-"));
    row(text, "trains", muscles(exercise.primary(), catalogue));
    row(text, "helps", muscles(exercise.secondary(), catalogue));
    row(text, "sides, position", exercise.sides().id() + ", " + exercise.position().id());
    row(text, "needs", orDash(exercise.needs().stream().map(CatalogueSheet::need).toList()));
    row(text, "may stay on", orDash(List.copyOf(exercise.allowsWorn())));
    row(text, "intensity, level", exercise.intensity() + " of 3, " + exercise.level() + " of 3");
    row(text, "standing", standing(exercise));
    row(text, "joint demand", demand(exercise) + " (source: " + exercise.demandSource() + ")");
    row(text, "traits", orDash(List.copyOf(exercise.traits())));
    row(text, "MET", met(exercise));
    row(
        text,
        "not for",
        orDash(
            catalogue.limitations().values().stream()
                .filter(l -> !l.allows(exercise))
                .map(Limitation::name)
                .toList()));
    return text.toString();
  }

  private static String standing(Exercise exercise) {
    String sources = String.join(", ", exercise.standingSources());
    return exercise.standing() + " of 3" + (sources.isEmpty() ? "" : " (" + sources + ")");
  }

  private static void row(StringBuilder text, String label, String value) {
    text.append(String.format(Locale.ROOT, "%-17s %s\n", label, value));
  }

  private static String muscles(Iterable<String> ids, Catalogue catalogue) {
    List<String> names = new ArrayList<>();
    ids.forEach(
        muscle -> names.add(catalogue.muscles().get(muscle).name().toLowerCase(Locale.ROOT)));
    return orDash(names);
  }

  private static String need(Need need) {
    return need.count()
        + " "
        + need.equipment()
        + need.load().map(load -> " (" + load.id() + ")").orElse("");
  }

  private static String demand(Exercise exercise) {
    return orDash(
        exercise.demand().entrySet().stream()
            .map(d -> d.getKey().id() + " " + d.getValue())
            .toList());
  }

  private static String met(Exercise exercise) {
    return exercise.met().value()
        + " (Compendium "
        + exercise.met().edition()
        + ", code "
        + exercise.met().code()
        + ")";
  }

  private static String orDash(List<String> words) {
    return words.isEmpty() ? "-" : words.stream().collect(Collectors.joining(", "));
  }
}
