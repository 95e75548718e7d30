package counterset.cli;

import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.report.json.CatalogueJson;
import counterset.report.text.CatalogueSheet;
import counterset.spelling.Nearest;
import java.util.concurrent.Callable;
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
    shell
        .out()
        .print(
            format == Format.JSON
                ? CatalogueJson.exercise(exercise)
                : CatalogueSheet.of(exercise, catalogue));
    return Exit.DONE;
  }
}
