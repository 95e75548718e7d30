package counterset.cli;

import counterset.intake.GivenPlan;
import counterset.intake.Readers;
import counterset.journal.DonePlan;
import counterset.journal.Entry;
import counterset.journal.Journal;
import counterset.journal.Lift;
import counterset.journal.Reading;
import counterset.json.BadRequest;
import counterset.json.InvalidInputException;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.problem.PlanFile;
import counterset.report.json.LogJson;
import counterset.report.text.LogList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a session that was done. */
@Command(
    name = "add",
    description = "Adds a session that was done to a journal, and the journal if there is none.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  counterset log add legs.json --log anna.jsonl --rpe 6 --load goblet-squat=10kgx14",
      "",
      "RPE (Foster 2001), asked about half an hour after the session: 0 rest; 1 very, very easy;",
      "2 easy; 3 moderate; 4 somewhat hard; 5 hard; 7 very hard; 10 maximal."
    })
final class LogAddCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(arity = "1", paramLabel = "PLAN", description = "The plan that was done (.json).")
  private String file;

  @Option(names = "--log", paramLabel = "FILE", description = "The journal. Required.")
  private String log;

  @Option(
      names = "--rpe",
      paramLabel = "N",
      description = "How hard the whole session felt, 0 to 10. Required.")
  private String rpe;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day it was done, such as 2026-03-02; without it, today.")
  private String date;

  @Option(
      names = "--minutes",
      paramLabel = "N",
      description = "How long it took, rests included; without it, as planned.")
  private String minutes;

  @Option(
      names = "--load",
      paramLabel = "EXERCISE=KGkgxREPS",
      description =
          "What was lifted, set by set: goblet-squat=10kgx14,10kgx12. The mass of one piece. May be"
              + " repeated.")
  private List<String> loads = new ArrayList<>();

  @Option(names = "--mass", paramLabel = "KG", description = "The body mass of the client.")
  private String mass;

  @Option(names = "--note", paramLabel = "TEXT", description = "What to remember.")
  private String note;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  LogAddCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
    List<String> faults = new ArrayList<>();
    Fields fields = new Fields(faults);
    fields.log(log);
    double rated = fields.rpe(rpe);
    LocalDate day = fields.date(date).orElseGet(() -> LocalDate.now(shell.clock()));
    OptionalInt took = fields.minutes(minutes);
    OptionalDouble kg = fields.mass(mass);
    Optional<String> remembered = fields.note(note);
    Optional<Plan> plan = attempt(faults, () -> plan(catalogue));
    List<Lift> lifts = lifts(plan, catalogue, faults);
    Optional<Reading> before = attempt(faults, this::before);
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
    DonePlan done = new DonePlan(plan.orElseThrow());
    int length = took.orElse(done.minutes());
    Entry entry =
        Entry.builder()
            .date(day)
            .title(plan.orElseThrow().problem().title())
            .minutes(length)
            .rpe(rated)
            .note(remembered)
            .mass(kg)
            .exercises(done.exercises())
            .loads(lifts)
            .muscles(done.muscles())
            .energy(done.energy(length))
            .build();
    new Journal(shell.path(log)).append(entry);
    print(entry, before.orElseThrow(), catalogue);
    return Exit.DONE;
  }

  private void print(Entry entry, Reading before, Catalogue catalogue) {
    LeftOut.say(shell, log, before);
    if (before.entries().stream()
        .anyMatch(e -> e.date().equals(entry.date()) && e.title().equals(entry.title()))) {
      shell.say(
          log
              + ": There was an entry of that day and title already; both count. To leave one out,"
              + " end its line with #cut.");
    }
    shell
        .out()
        .print(
            format == Format.JSON
                ? LogJson.entry(entry)
                : LogList.of(List.of(entry), catalogue, shell.colour()));
  }

  private Plan plan(Catalogue catalogue) {
    PlanFile read = Readers.plans(catalogue).read(shell.path(file));
    return GivenPlan.of(read, catalogue, Version.current()).plan();
  }

  /** What the journal holds so far: nothing is added to a file that is not one. */
  private Reading before() {
    Journal journal = log == null ? null : new Journal(shell.path(log));
    return journal != null && journal.exists() ? journal.read() : new Reading(List.of(), List.of());
  }

  private List<Lift> lifts(Optional<Plan> plan, Catalogue catalogue, List<String> faults) {
    List<String> ids =
        plan.map(it -> it.session().work().map(Exercise::id).distinct().toList())
            .orElse(List.copyOf(catalogue.exercises().keySet()));
    return new LoadArguments(ids, plan.isPresent() ? "this plan" : "the catalogue", faults)
        .read(loads);
  }

  private static <T> Optional<T> attempt(List<String> faults, Supplier<T> work) {
    try {
      return Optional.of(work.get());
    } catch (InvalidInputException e) {
      e.violations().stream().map(Violation::toString).forEach(faults::add);
      return Optional.empty();
    }
  }
}
