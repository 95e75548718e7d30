package counterset.cli;

import counterset.catalogue.Gaps;
import counterset.catalogue.GapsJson;
import counterset.catalogue.HomeEquipment;
import counterset.catalogue.LimitationGaps;
import counterset.model.Catalogue;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells where the catalogue is empty or thin: muscle group by equipment by limitation. */
@Command(
    name = "gaps",
    description =
        "Tells for which muscle group, equipment and limitation there are too few exercises.",
    mixinStandardHelpOptions = true)
final class CatalogueGapsCommand implements Callable<Integer> {

  private final Shell shell;

  @Option(
      names = "--limitations",
      description = "Tell it for home equipment by limitation and by pair of limitations.")
  private boolean byLimitation;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  CatalogueGapsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
    if (byLimitation) {
      print(LimitationGaps.of(catalogue));
      return Exit.DONE;
    }
    Gaps gaps = Gaps.of(catalogue);
    if (format == Format.JSON) {
      shell.out().print(GapsJson.text(gaps));
      return Exit.DONE;
    }
    print("Nothing at all:", gaps.empty());
    print("Fewer than " + Gaps.ENOUGH + ":", gaps.thin());
    shell.say(
        gaps.empty().size()
            + " empty, "
            + gaps.thin().size()
            + " thin, of "
            + gaps.cells().size()
            + " combinations");
    return Exit.DONE;
  }

  private void print(LimitationGaps gaps) {
    if (format == Format.JSON) {
      shell.out().print(GapsJson.text(gaps));
      return;
    }
    List<LimitationGaps.Cell> missing = gaps.missing();
    if (missing.isEmpty()) {
      shell
          .out()
          .print(
              String.format(
                  Locale.ROOT,
                  "Nothing is missing: every target keeps %d or more exercises for each limitation"
                      + " and %d or more for each pair.\n",
                  LimitationGaps.ENOUGH_FOR_ONE,
                  LimitationGaps.ENOUGH_FOR_TWO));
    }
    for (LimitationGaps.Cell cell : missing) {
      shell
          .out()
          .print(
              String.format(
                  Locale.ROOT,
                  "%-42s %-16s %d of %d\n",
                  String.join(" + ", cell.limitations()),
                  cell.muscle(),
                  cell.count(),
                  cell.enough()));
    }
    shell.say("home equipment: " + String.join(", ", HomeEquipment.IDS));
    shell.say(missing.size() + " missing, of " + gaps.cells().size() + " combinations");
  }

  private void print(String title, List<Gaps.Cell> cells) {
    shell.out().print(title + "\n");
    for (Gaps.Cell cell : cells) {
      shell
          .out()
          .print(
              String.format(
                  Locale.ROOT,
                  "  %-16s %-16s %-20s %d\n",
                  cell.muscle(),
                  cell.equipment().orElse("no equipment"),
                  cell.limitation().orElse("no limitation"),
                  cell.count()));
    }
  }
}
