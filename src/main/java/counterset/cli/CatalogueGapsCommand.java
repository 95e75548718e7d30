package counterset.cli;

import counterset.catalogue.Gaps;
import counterset.catalogue.GapsJson;
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

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  CatalogueGapsCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
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
