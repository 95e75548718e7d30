package counterset.cli;

import counterset.bound.ScoreBound;
import counterset.intake.Request;
import counterset.json.BadRequest;
import counterset.model.Bound;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.report.file.Handout;
import counterset.report.file.WholeFiles;
import counterset.report.json.PlanJson;
import counterset.search.SessionPlanner;
import counterset.training.LoadAdvice;
import counterset.training.Past;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans one session. */
@Command(
    name = "plan",
    description = "Plans one session from one line in a coach's words, or from a problem file.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  counterset plan \"20 min, lower body, dumbbells plus ankle weights, sore knees\"",
      "",
      "Exit status: 0 done; 1 internal error; 2 bad usage or bad input; 3 no feasible session."
    })
final class PlanCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(
      arity = "1..*",
      paramLabel = "ASK",
      description = "What is asked for, or the name of a problem file.")
  List<String> ask;

  @Mixin final CatalogueOptions catalogues = new CatalogueOptions();

  @Mixin final DetailOption length = new DetailOption();

  @Mixin final PastOptions past = new PastOptions();

  @Option(names = "--format", paramLabel = "KIND", description = "text (the run sheet) or json.")
  Format format = Format.TEXT;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Also write the plan to a file; its ending (.txt, .json, .html, .vtt, .chapters.vtt, .ics,"
              + " .csv, .md) says how. May be repeated.")
  List<String> files = new ArrayList<>();

  @Option(names = "--seed", paramLabel = "N", description = "Another seed gives another plan.")
  Long seed;

  @Mixin final SearchOptions search = new SearchOptions();

  @Mixin final WishOptions wishes = new WishOptions();

  @Mixin final StartOption start = new StartOption();

  @Option(
      names = "--track",
      paramLabel = "NAME",
      description =
          "Give the session as the followers of one track do it, such as sore-knees or"
              + " sore-knees+no-floor.")
  String track;

  @Option(
      names = "--bound",
      description = "Also tell how many points more any session could have, without a search.")
  boolean bound;

  PlanCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    checkOptions();
    Catalogue catalogue = catalogues.load(shell);
    Request<Problem> request = Request.session(ask, catalogue, shell.folder());
    Problem wished = wishes.addTo(request.problem(), catalogue);
    Problem asked = seed == null ? wished : wished.withSeed(seed);
    Past done = past.read(shell, asked);
    Problem problem = done.before(asked);
    WriteFiles.needDay(files, problem.date());
    TrackChoice choice = TrackChoice.of(problem, Optional.ofNullable(track));
    Plan plan = plan(problem, catalogue);
    if (!plan.canBeLed()) {
      if (format == Format.JSON) {
        shell.out().print(PlanJson.text(plan, catalogue));
      }
      request.echo().forEach(line -> shell.say("Read as: " + line));
      Explanation.ofRefusal(shell, plan, catalogue);
      return Exit.INFEASIBLE;
    }
    Plan held = bound ? held(plan, catalogue) : plan;
    Plan alone = choice.from(held);
    List<LoadAdvice> loads = done.loads(alone);
    Handout led = handout(choice.asLed(held), catalogue, loads);
    Handout byItself = handout(alone, catalogue, loads);
    write(led, byItself);
    print(request, format == Format.JSON ? byItself : led);
    shell.out().flush();
    Explanation.ofUnmetWishes(shell, plan, catalogue);
    return Exit.DONE;
  }

  private void checkOptions() {
    List<String> faults = new ArrayList<>(past.faults());
    WriteFiles.check(files, Handout.KINDS, faults);
    search.check(faults);
    start.check(faults);
    if (bound && track != null) {
      faults.add(
          "--bound is about the session that all do, not about that of a track. Maybe leave out"
              + " --track ("
              + track
              + ").");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  private Plan held(Plan plan, Catalogue catalogue) {
    Optional<Bound> limit = ScoreBound.of(plan.problem(), catalogue).of(plan.score());
    if (limit.isEmpty()) {
      shell.say("No limit is known: some weights are too large to be added up.");
    }
    return limit.map(plan::withBound).orElse(plan);
  }

  private Plan plan(Problem problem, Catalogue catalogue) {
    SessionPlanner planner = new SessionPlanner(catalogue, Version.current());
    return Interruption.during(
        () -> Progress.during(shell, "Planning", () -> planner.plan(problem, search.limit())),
        planner::stop);
  }

  private Handout handout(Plan plan, Catalogue catalogue, List<LoadAdvice> loads) {
    return new Handout(
        plan,
        catalogue,
        loads,
        plan.problem().date(),
        start.time(),
        catalogues.pictures(shell),
        length.detail());
  }

  /**
   * Sheets to lead by show the session as it is led; files to be read again stand by themselves.
   */
  private void write(Handout led, Handout byItself) {
    Map<Path, String> texts = new LinkedHashMap<>();
    for (String file : files) {
      Handout handout = Handout.isReadAgain(file) ? byItself : led;
      texts.put(shell.path(file), Handout.KINDS.render(file, handout));
    }
    WholeFiles.write(texts);
  }

  private void print(Request<Problem> request, Handout handout) {
    if (!handout.plan().solver().complete()) {
      shell.say("Interrupted: this is the best plan found so far.");
    }
    if (format == Format.JSON) {
      request.echo().forEach(line -> shell.say("Read as: " + line));
      shell.out().print(handout.json());
    } else {
      request.echo().forEach(line -> shell.out().print("Read as: " + line + "\n"));
      shell.out().print((request.echo().isEmpty() ? "" : "\n") + handout.text(shell.colour()));
    }
  }
}
