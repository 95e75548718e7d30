package counterset.cli;

import counterset.json.Shown;
import counterset.json.Violation;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.problem.PlanFile;
import counterset.problem.PlanFileReader;
import counterset.report.SwapList;
import counterset.report.json.PlanDifferences;
import counterset.report.json.PlanJson;
import counterset.report.json.SwapJson;
import counterset.report.text.RunSheet;
import counterset.report.text.SwapTable;
import counterset.solve.Replacement;
import counterset.solve.SessionPlanner;
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

/** Lists what could stand at a place of a plan instead, and puts one of them there. */
@Command(
    name = "swap",
    description =
        "Ranks what could stand at a place of a plan by what it does to the whole session; --take"
            + " puts one of them there.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  counterset swap tuesday.json --at 3B",
      "  counterset swap tuesday.json --at 3B --take 2 --write tuesday.json",
      "",
      "Exit status: 0 done; 2 bad usage or bad input; 3 the session would break a rule, or nothing",
      "that keeps every rule can stand there."
    })
final class SwapCommand implements Callable<Integer> {

  private static final int FILE_FAULTS_SHOWN = 3;

  private final Shell shell;
  private Catalogue catalogue;

  @Parameters(arity = "1", paramLabel = "PLAN", description = "A plan file (.json).")
  private String file;

  @Option(
      names = "--at",
      paramLabel = "PLACE",
      description = "The place, such as 3B: superset 3, second exercise.")
  private String place;

  @Option(
      names = "--take",
      paramLabel = "CHOICE",
      description = "Put one in: its number in the list, its id or its name.")
  private String take;

  @Option(names = "--all", description = "List all, not only the best ten.")
  private boolean all;

  @Option(
      names = "--release",
      description =
          "Swap although the plan's problem keeps what stands there, and keep it no more.")
  private boolean release;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Also write the new plan to a file; its ending (.txt, .json) says how. May be repeated.")
  private List<String> files = new ArrayList<>();

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  SwapCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    checkOptions();
    catalogue = catalogues.load(shell);
    PlanFile read =
        new PlanFileReader(Request.problems(catalogue), catalogue).read(shell.path(file));
    Plan plan = new Recheck(read, catalogue).plan();
    At at = Places.filled(place, plan);
    Plan from = released(plan, at);
    tellOfTheFile(read, plan);
    SwapChoices choices = new SwapChoices(from, at, catalogue);
    return take == null ? list(choices) : take(from, at, choices);
  }

  private void checkOptions() {
    List<String> faults = new ArrayList<>();
    for (String name : files) {
      if (!PlanFormats.knows(name)) {
        faults.add(
            "--write ("
                + name
                + ") has no ending that is known. Maybe one of "
                + PlanFormats.endings()
                + ".");
      }
    }
    if (take == null && !files.isEmpty()) {
      faults.add("--write needs --take: only a plan with a replacement is written.");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  /** The plan to start from, which may have to give up keeping what stands at the place. */
  private Plan released(Plan plan, At at) {
    Optional<Keep> kept = Places.keeping(plan, at);
    if (kept.isEmpty()) {
      return plan;
    }
    if (!release) {
      String name = Places.standing(plan, at).map(Exercise::name).orElseThrow();
      throw new BadRequest(
          "--at ("
              + at
              + "): "
              + name
              + " is kept there, as the plan's problem asks. Maybe add --release, which keeps it no"
              + " more.");
    }
    List<Keep> others = new ArrayList<>(plan.problem().keep());
    others.remove(kept.get());
    return new SessionPlanner(catalogue, Commands.version())
        .score(plan.problem().keeping(others), plan.session(), plan.solver());
  }

  /** What stands in supersets counts; figures that somebody left behind are worked out anew. */
  private void tellOfTheFile(PlanFile read, Plan plan) {
    List<Violation> differences = PlanDifferences.of(read.document(), plan, catalogue);
    if (differences.isEmpty()) {
      return;
    }
    shell.say("The file says something else than its session works out to; the supersets count:");
    differences.stream().limit(FILE_FAULTS_SHOWN).forEach(it -> shell.say("  " + it));
    int more = differences.size() - FILE_FAULTS_SHOWN;
    if (more > 0) {
      shell.say("  " + more + " more: counterset check " + file + " tells them all.");
    }
    read.solver()
        .map(SolverNote::version)
        .filter(version -> !version.equals(Commands.version()))
        .ifPresent(
            version ->
                shell.say("  It was written by version " + Shown.of(version) + " of Counterset."));
  }

  private int list(SwapChoices choices) {
    SwapList list = choices.list(all);
    shell
        .out()
        .print(
            format == Format.JSON
                ? SwapJson.text(list)
                : SwapTable.of(list, catalogue, shell.colour()));
    return choices.anyIsFeasible() ? Exit.DONE : Exit.INFEASIBLE;
  }

  private int take(Plan from, At at, SwapChoices choices) {
    SwapTaking taking = new SwapTaking(from, at, catalogue, choices);
    Optional<Replacement> chosen = taking.chosen(take);
    if (chosen.isEmpty()) {
      taking.refusal(take).forEach(shell::say);
      return Exit.INFEASIBLE;
    }
    Plan after = choices.with(chosen.get());
    write(after);
    shell
        .out()
        .print(
            format == Format.JSON
                ? PlanJson.text(after, catalogue)
                : RunSheet.of(after, catalogue, shell.colour()));
    shell.out().flush();
    taking.told(chosen.get(), after).forEach(shell::say);
    if (Feasibility.isFeasible(after)) {
      return Exit.DONE;
    }
    shell.say("The session still breaks a rule:");
    Feasibility.hardFaults(after, catalogue).forEach(fault -> shell.say("  " + fault));
    return Exit.INFEASIBLE;
  }

  private void write(Plan after) {
    Map<Path, String> texts = new LinkedHashMap<>();
    files.forEach(name -> texts.put(shell.path(name), PlanFormats.render(name, after, catalogue)));
    OutputFiles.write(texts);
  }
}
