package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.Nearest;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Need;
import counterset.report.json.CatalogueJson;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows one exercise with everything that is known of it. */
@Command(name = "show", description = "Shows one exercise.", mixinStandardHelpOptions = true)
final class CatalogueShowCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(arity = "1", paramLabel = "EXERCISE", description = "Its id.")
  private String id;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  CatalogueShowCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
    Exercise exercise = catalogue.exercises().get(id);
    if (exercise == null) {
      throw new BadRequest(
          "There is no exercise (" + id + ")." + Nearest.maybe(id, catalogue.exercises().keySet()));
    }
    if (format == Format.JSON) {
      shell.out().print(CatalogueJson.exercise(exercise));
    } else {
      print(exercise, catalogue, shell.out());
    }
    return Exit.DONE;
  }

  private static void print(Exercise exercise, Catalogue catalogue, PrintWriter out) {
    out.print(exercise.name() + "\n" + exercise.setup() + "\n");
    exercise.cues().forEach(cue -> out.print("  - " + cue + "\n"));
    exercise.faults().forEach(fault -> out.print("  ! " + fault + "\n"));
    row(out, "part", exercise.part().id());
    row(out, "pattern, family", exercise.pattern() + ", " + exercise.family());
    row(out, "variant of", exercise.variantOf().orElse("-"));
    row(out, "trains", muscles(exercise.primary(), catalogue));
    row(out, "helps", muscles(exercise.secondary(), catalogue));
    row(out, "sides, position", exercise.sides().id() + ", " + exercise.position().id());
    row(out, "needs", list(exercise.needs().stream().map(CatalogueShowCommand::need).toList()));
    row(out, "may stay on", list(List.copyOf(exercise.allowsWorn())));
    row(out, "intensity, level", exercise.intensity() + " of 3, " + exercise.level() + " of 3");
    row(out, "joint demand", demand(exercise) + " (source: " + exercise.demandSource() + ")");
    row(out, "traits", list(List.copyOf(exercise.traits())));
    row(out, "MET", met(exercise));
    row(
        out,
        "not for",
        list(
            catalogue.limitations().values().stream()
                .filter(l -> !l.allows(exercise))
                .map(Limitation::name)
                .toList()));
  }

  private static void row(PrintWriter out, String label, String value) {
    out.print(
        String.format(Locale.ROOT, "%-17s %s%n", label, value)
            .replace(System.lineSeparator(), "\n"));
  }

  private static String muscles(Iterable<String> ids, Catalogue catalogue) {
    List<String> names = new java.util.ArrayList<>();
    ids.forEach(
        muscle -> names.add(catalogue.muscles().get(muscle).name().toLowerCase(Locale.ROOT)));
    return list(names);
  }

  private static String need(Need need) {
    return need.count()
        + " "
        + need.equipment()
        + need.load().map(load -> " (" + load.id() + ")").orElse("");
  }

  private static String demand(Exercise exercise) {
    return list(
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

  private static String list(List<String> words) {
    return words.isEmpty() ? "-" : words.stream().collect(Collectors.joining(", "));
  }
}
