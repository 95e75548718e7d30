package counterset.cli;

import counterset.explain.Unmet;
import counterset.intake.CheckSource;
import counterset.intake.Request;
import counterset.json.BadRequest;
import counterset.json.JsonDocument;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.report.BetterPlan;
import counterset.report.file.Handout;
import counterset.report.json.PlanJson;
import counterset.report.text.RunSheet;
import counterset.report.text.ScoreTable;
import counterset.review.Checked;
import counterset.review.CheckedWeek;
import counterset.search.Effort;
import counterset.search.Improver;
import counterset.search.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Recomputes and scores a session, whoever wrote it, says what breaks and where, and mends it. */
@Command(
    name = "check",
    description =
        "Recomputes and scores a plan, one edited by hand included, or a session typed as plain"
            + " text; says what breaks and where, and what the best single change is.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "A typed session has one exercise a line, or a superset with / between its exercises:",
      "",
      "  20 min, lower body, dumbbells, sore knees",
      "  45/30",
      "  db rdl / calf raises",
      "  suitcase deadlift, each side",
      "",
      "Examples:",
      "  counterset check tuesday.txt --for \"20 min, lower body, dumbbells\"",
      "  counterset check tuesday.txt --improve --changes 3 --write tuesday.json",
      "",
      "Exit status: 0 the session keeps every rule; 2 the file cannot be read or contradicts itself;",
      "3 the session breaks a rule."
    })
final class CheckCommand implements Callable<Integer> {

  private final Shell shell;
  private Catalogue catalogue;

  @Parameters(
      arity = "1",
      paramLabel = "FILE",
      description =
          "A plan file or a planned week (.json), or a typed session (any other ending); - for"
              + " what is piped in.")
  private String file;

  @Option(
      names = "--for",
      paramLabel = "ASK",
      description =
          "What a typed session is judged by: one line in a coach's words, or a problem file."
              + " Without it the first line of the text may say so.")
  private String ask;

  @Option(
      names = "--improve",
      description = "Plan from it: give a session that is better, or the same if none is.")
  private boolean improve;

  @Option(
      names = "--changes",
      paramLabel = "N",
      description = "With --improve: change at most N places; without it as many as it likes.")
  private Integer changes;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "With --improve: also write the better session to a file; its ending (.txt, .json) says"
              + " how. May be repeated.")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      description = "With --improve: quick, standard (the default) or thorough.")
  private Effort effort = Effort.STANDARD;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  @Mixin final DetailOption length = new DetailOption();

  CheckCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    checkOptions();
    catalogue = catalogues.load(shell);
    CheckSource source =
        new CheckSource(catalogue, file, shell.folder(), shell.in(), Version.current());
    if (!source.isJson()) {
      return check(source.typed(asked()));
    }
    if (ask != null) {
      throw new BadRequest(
          "--for is for typed text; a plan file says itself what it was planned for. Leave it"
              + " out.");
    }
    JsonDocument document = source.document();
    if (!CheckSource.isWeek(document)) {
      return check(source.plan(document));
    }
    if (improve) {
      throw new BadRequest(
          file
              + ": is a planned week; --improve is for one session. Maybe: counterset week --redo,"
              + " which plans days of it anew.");
    }
    CheckedWeek week = source.week(document);
    shell.out().print(format == Format.JSON ? week.json() : week.text(shell.colour()));
    return Exit.of(week);
  }

  private Optional<Problem> asked() {
    return ask == null
        ? Optional.empty()
        : Optional.of(Request.session(List.of(ask), catalogue, shell.folder()).problem());
  }

  private void checkOptions() {
    List<String> faults = new ArrayList<>();
    WriteFiles.check(files, Handout.KINDS, faults);
    if (!improve && !files.isEmpty()) {
      faults.add("--write needs --improve: only a better session is written.");
    }
    if (!improve && changes != null) {
      faults.add("--changes needs --improve.");
    }
    if (changes != null && changes < 0) {
      faults.add("--changes (" + changes + ") must be 0 or more.");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  private int check(Checked checked) {
    if (improve) {
      return improve(checked);
    }
    BetterPlan one = better(checked.plan(), OptionalInt.of(1));
    Optional<BetterPlan> best = Optional.of(one).filter(BetterPlan::isBetter);
    if (format == Format.JSON) {
      shell.out().print(checked.json().bestChange(best).text());
    } else {
      checked.reading().forEach(this::line);
      checked.verdict().forEach(this::line);
      Checked.best(best).forEach(this::line);
      shell.out().print(ScoreTable.of(checked.plan(), catalogue, shell.colour()));
    }
    return Exit.of(checked);
  }

  private BetterPlan better(Plan plan, OptionalInt most) {
    Improver improver = new Improver(catalogue, Version.current());
    Plan found =
        Interruption.during(
            () ->
                Progress.during(
                    shell,
                    "Looking for something better",
                    () -> improver.improve(plan, most, Limit.of(effort))),
            improver::stop);
    return new BetterPlan(plan, found, Improver.changed(plan, found), catalogue);
  }

  /** Results are the better session and nothing else; what is said of it are messages. */
  private int improve(Checked checked) {
    OptionalInt most = changes == null ? OptionalInt.empty() : OptionalInt.of(changes);
    BetterPlan better = better(checked.plan(), most);
    Plan after = better.to();
    write(after);
    checked.reading().forEach(shell::say);
    shell
        .out()
        .print(
            format == Format.JSON
                ? PlanJson.text(after, catalogue)
                : RunSheet.of(after, catalogue, shell.colour(), length.detail()));
    shell.out().flush();
    if (better.isBetter()) {
      shell.say(count(better) + ", " + better.worth() + ":");
      Checked.told(better).forEach(shell::say);
    } else {
      shell.say(
          "Nothing better was found"
              + (changes == null ? "" : " with " + most(changes))
              + "; the session stays as it is.");
    }
    if (after.canBeLed()) {
      return Exit.DONE;
    }
    shell.say("The session still breaks a rule:");
    Unmet.rules(after, catalogue).forEach(fault -> shell.say("  " + fault));
    return Exit.INFEASIBLE;
  }

  private static String count(BetterPlan better) {
    int number = better.changed().size();
    return number == 1 ? "One place changed" : number + " places changed";
  }

  private static String most(int changes) {
    return changes == 1 ? "one change" : "at most " + changes + " changes";
  }

  private void write(Plan after) {
    WriteFiles.write(
        files, new Handout(after, catalogue, catalogues.pictures(shell), length.detail()), shell);
  }

  private void line(String text) {
    shell.out().print(text + "\n");
  }
}
