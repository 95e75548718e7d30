package counterset.cli;

import counterset.journal.Entry;
import counterset.journal.Journal;
import counterset.journal.Reading;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Muscle;
import counterset.report.json.LogJson;
import counterset.report.text.LogSummary;
import counterset.training.Summary;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sums a journal up. */
@Command(
    name = "summary",
    description =
        "Sums up seven days of a journal: load, monotony and strain (Foster), sets by muscle group"
            + " against published ranges, energy by the Compendium's METs.",
    mixinStandardHelpOptions = true)
final class LogSummaryCommand implements Callable<Integer> {

  private static final int MOST_WEEKS = 520;
  private static final int WEEKS = 4;

  private final Shell shell;

  @Option(names = "--log", paramLabel = "FILE", description = "The journal. Required.")
  private String log;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The last of the seven days; without it, that of the last entry.")
  private String date;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      description = "How many weeks of load to show (default: 4).")
  private String weeks;

  @Option(
      names = "--mass",
      paramLabel = "KG",
      description = "The body mass for sessions that were logged without one.")
  private String mass;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  LogSummaryCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    List<String> faults = new ArrayList<>();
    Fields fields = new Fields(faults);
    fields.log(log);
    Optional<LocalDate> day = fields.date(date);
    int shown = fields.whole("--weeks", weeks, MOST_WEEKS).orElse(WEEKS);
    OptionalDouble kg = fields.mass(mass);
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
    Catalogue catalogue = catalogues.load(shell);
    Reading reading = new Journal(shell.path(log)).read();
    LeftOut.say(shell, log, reading);
    LocalDate last = day.orElseGet(() -> last(reading.entries()));
    List<String> muscles =
        catalogue.muscles().values().stream()
            .filter(Muscle::defaultTarget)
            .map(Muscle::id)
            .toList();
    Summary summary = Summary.of(reading.entries(), last, shown, muscles, kg);
    shell
        .out()
        .print(
            format == Format.JSON
                ? LogJson.summary(summary)
                : LogSummary.of(summary, catalogue, shell.colour()));
    return Exit.DONE;
  }

  private LocalDate last(List<Entry> entries) {
    if (entries.isEmpty()) {
      throw new BadRequest(log + ": There is no entry yet to sum up. Maybe: counterset log add");
    }
    return entries.get(entries.size() - 1).date();
  }
}
