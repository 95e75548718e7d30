package counterset.cli;

import counterset.intake.Request;
import counterset.intake.WeekRedo;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.report.file.WeekHandout;
import counterset.search.BlockPlanner;
import counterset.search.WeekPlanner;
import counterset.training.WeekPast;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the sessions of a week together. */
@Command(
    name = "week",
    description =
        "Plans the sessions of a week together, from one line in a coach's words or a week file.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  counterset week \"4 sessions, Mon Tue Thu Sat, 20 min, lower Mon and Thu, upper Tue,",
      "    whole body Sat, dumbbells\" --write week.json",
      "  counterset week week.json --redo tue --seed 2",
      "",
      "Exit status: 0 done; 1 internal error; 2 bad usage or bad input; 3 no feasible week."
    })
final class WeekCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(
      arity = "1..*",
      paramLabel = "ASK",
      description = "What is asked for, or the name of a week file; with --redo, a planned week.")
  private List<String> ask;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  @Mixin final DetailOption length = new DetailOption();

  @Mixin private final PastOptions past = new PastOptions();

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Also write the week to a file (.txt, .json, .html, .ics, .csv, .md), or to a folder (DIR/)"
              + " one .txt, one .json and one .html"
              + " file a session, such as monday.txt. May be repeated.")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--weeks",
      paramLabel = "N",
      description = "Plan a block of N weeks, 1 to 12, one after the other.")
  private int weeks = 1;

  @Option(
      names = "--redo",
      paramLabel = "DAY",
      split = ",",
      description =
          "Plan these days of a planned week (.json) anew and keep all others exactly; maybe with"
              + " another --seed.")
  private List<String> redo = new ArrayList<>();

  @Option(names = "--seed", paramLabel = "N", description = "Another seed gives another week.")
  private Long seed;

  @Mixin private final SearchOptions search = new SearchOptions();

  @Mixin private final StartOption start = new StartOption();

  WeekCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Set<DayOfWeek> days = checkOptions();
    Catalogue catalogue = catalogues.load(shell);
    return days.isEmpty() ? plan(catalogue) : redo(days, catalogue);
  }

  private Set<DayOfWeek> checkOptions() {
    List<String> faults = new ArrayList<>(past.faults());
    WriteFiles.checkWeek(files, shell, faults);
    Set<DayOfWeek> days = Days.read("--redo", redo, faults);
    if (weeks < 1 || weeks > BlockPlanner.MOST_WEEKS) {
      faults.add("--weeks (" + weeks + ") must be from 1 to " + BlockPlanner.MOST_WEEKS + ".");
    }
    search.check(faults);
    start.check(faults);
    if (!redo.isEmpty() && weeks > 1) {
      faults.add("--redo is about one planned week. Leave out --weeks (" + weeks + ").");
    }
    if (!redo.isEmpty() && past.log != null) {
      faults.add("--redo keeps what was done before as the planned week has it. Leave out --log.");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
    return days;
  }

  private int plan(Catalogue catalogue) {
    Request<WeekProblem> request = Request.week(ask, catalogue, shell.folder());
    WeekProblem asked = seed == null ? request.problem() : request.problem().withSeed(seed);
    WeekPast done = past.readWeek(shell);
    WriteFiles.needDay(files, done.monday());
    WeekProblem problem = done.before(asked, catalogue);
    List<WeekPlan> found =
        weeks == 1 ? List.of(week(problem, catalogue)) : block(problem, catalogue);
    return handOut(
        new WeekHandout(
            found,
            weeks == 1 ? done.loads(found.get(0)) : List.of(),
            catalogue,
            done.monday(),
            start.time(),
            catalogues.pictures(shell),
            length.detail()),
        request.echo());
  }

  private WeekPlan week(WeekProblem problem, Catalogue catalogue) {
    WeekPlanner planner = new WeekPlanner(catalogue, Version.current());
    return Interruption.during(
        () -> Progress.during(shell, "Planning", () -> planner.plan(problem, search.limit())),
        planner::stop);
  }

  private List<WeekPlan> block(WeekProblem problem, Catalogue catalogue) {
    BlockPlanner planner = new BlockPlanner(catalogue, Version.current());
    return Interruption.during(
        () ->
            Progress.during(shell, "Planning", () -> planner.plan(problem, weeks, search.limit())),
        planner::stop);
  }

  private int redo(Set<DayOfWeek> days, Catalogue catalogue) {
    // The planned week has no date; only a calendar asks for one.
    Optional<LocalDate> monday = past.day().map(WeekPast::mondayOf);
    WriteFiles.needDay(files, monday);
    WeekRedo again =
        WeekRedo.read(
            shell.path(String.join(" ", ask)),
            days,
            seed == null ? OptionalLong.empty() : OptionalLong.of(seed),
            catalogue,
            Version.current());
    WeekPlanner scorer = new WeekPlanner(catalogue, Version.current());
    WeekPlan joined = again.joined(week(again.pinned(scorer), catalogue), scorer);
    if (again.changesNothing(joined)) {
      shell.say("Nothing better was found: the week is as it was. Maybe name another --seed.");
    }
    return handOut(
        new WeekHandout(
            List.of(joined),
            List.of(),
            catalogue,
            monday,
            start.time(),
            catalogues.pictures(shell),
            length.detail()),
        List.of());
  }

  private int handOut(WeekHandout result, List<String> echo) {
    WeekRefusal refusal = new WeekRefusal(shell, result.weeks(), result.catalogue());
    boolean feasible = refusal.isFeasible();
    if (result.weeks().stream().anyMatch(week -> !week.solver().complete())) {
      shell.say("Interrupted: this is the best found so far.");
    }
    if (feasible) {
      WriteFiles.write(files, result, shell);
    }
    boolean json = format == Format.JSON;
    for (String line : echo) {
      if (json || !feasible) {
        shell.say("Read as: " + line);
      } else {
        shell.out().print("Read as: " + line + "\n");
      }
    }
    if (json) {
      shell.out().print(result.json());
    } else if (feasible) {
      shell.out().print((echo.isEmpty() ? "" : "\n") + result.text(shell.colour()));
    }
    shell.out().flush();
    if (!feasible) {
      refusal.explain();
      return Exit.INFEASIBLE;
    }
    refusal.unmetWishes();
    return Exit.DONE;
  }
}
