package counterset.cli;

import counterset.journal.Journal;
import counterset.journal.Reading;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.report.json.LogJson;
import counterset.report.text.LogList;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists a journal. */
@Command(
    name = "list",
    description =
        "Lists the sessions of a journal by date, with their load, loads lifted and notes.",
    mixinStandardHelpOptions = true)
final class LogListCommand implements Callable<Integer> {

  private final Shell shell;

  @Option(names = "--log", paramLabel = "FILE", description = "The journal. Required.")
  private String log;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  LogListCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    List<String> faults = new ArrayList<>();
    new Fields(faults).log(log);
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
    Catalogue catalogue = catalogues.load(shell);
    Reading reading = new Journal(shell.path(log)).read();
    LeftOut.say(shell, log, reading);
    shell
        .out()
        .print(
            format == Format.JSON
                ? LogJson.list(reading.entries())
                : LogList.of(reading.entries(), catalogue, shell.colour()));
    if (reading.entries().isEmpty()) {
      shell.say(log + ": There is no entry yet.");
    }
    return Exit.DONE;
  }
}
