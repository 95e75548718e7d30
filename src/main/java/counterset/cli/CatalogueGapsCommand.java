package counterset.cli;

import counterset.catalogue.Gaps;
import counterset.catalogue.GapsJson;
import counterset.catalogue.HomeEquipment;
import counterset.catalogue.LimitationGaps;
import counterset.model.Catalogue;
import counterset.report.text.GapsTable;
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
    return byLimitation ? print(LimitationGaps.of(catalogue)) : print(Gaps.of(catalogue));
  }

  private int print(Gaps gaps) {
    if (format == Format.JSON) {
      shell.out().print(GapsJson.text(gaps));
      return Exit.DONE;
    }
    shell.out().print(GapsTable.of(gaps));
    shell.say(
        gaps.empty().size()
            + " empty, "
            + gaps.thin().size()
            + " thin, of "
            + gaps.cells().size()
            + " combinations");
    return Exit.DONE;
  }

  private int print(LimitationGaps gaps) {
    if (format == Format.JSON) {
      shell.out().print(GapsJson.text(gaps));
      return Exit.DONE;
    }
    shell.out().print(GapsTable.of(gaps));
    shell.say("home equipment: " + String.join(", ", HomeEquipment.IDS));
    shell.say(gaps.missing().size() + " missing, of " + gaps.cells().size() + " combinations");
    return Exit.DONE;
  }
}
