package counterset.cli;

import counterset.explain.Unmet;
import counterset.json.BadRequest;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.report.SwapList;
import counterset.report.file.Handout;
import counterset.report.json.PlanJson;
import counterset.report.json.SwapJson;
import counterset.report.text.RunSheet;
import counterset.report.text.SwapTable;
import counterset.review.SwapChoices;
import counterset.review.SwapWords;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.Reflow;
import counterset.search.Replacement;
import java.util.ArrayList;
import java.util.List;
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
      names = "--reflow",
      description =
          "With --take: also plan the rest around it, with the fewest other changes that are worth"
              + " it.")
  private boolean reflow;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      description = "With --reflow: quick, standard (the default) or thorough.")
  private Effort effort = Effort.STANDARD;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Also write the new plan to a file; its ending (.txt, .json) says how. May be repeated.")
  private List<String> files = new ArrayList<>();

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  @Mixin final DetailOption length = new DetailOption();

  SwapCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    checkOptions();
    catalogue = catalogues.load(shell);
    PlanSource source = PlanSource.read(shell, file, catalogue);
    At at = PlaceOption.read(place, source.plan());
    Plan from = source.released(at, release);
    source.tell(shell, file);
    SwapChoices choices = new SwapChoices(from, at, catalogue, Version.current());
    return take == null ? list(from, choices) : take(from, at, choices);
  }

  private void checkOptions() {
    List<String> faults = new ArrayList<>();
    WriteFiles.check(files, Handout.KINDS, faults);
    if (take == null && !files.isEmpty()) {
      faults.add("--write needs --take: only a plan with a replacement is written.");
    }
    if (take == null && reflow) {
      faults.add("--reflow needs --take: the rest is planned around a replacement.");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  private int list(Plan from, SwapChoices choices) {
    SwapList list = choices.list(all);
    shell
        .out()
        .print(
            format == Format.JSON
                ? SwapJson.text(list)
                : SwapTable.of(list, catalogue, shell.colour()));
    if (choices.anyIsFeasible()) {
      return Exit.DONE;
    }
    shell.out().flush();
    shell.say("No feasible session: with none of them the session keeps every rule.");
    Unmet.rules(from, catalogue).forEach(fault -> shell.say("  " + fault));
    shell.say("Maybe swap another place.");
    return Exit.INFEASIBLE;
  }

  private int take(Plan from, At at, SwapChoices choices) {
    SwapTaking taking = new SwapTaking(from, at, catalogue, choices);
    Optional<Replacement> chosen = taking.chosen(take, reflow);
    if (chosen.isEmpty()) {
      taking.refusal(take).forEach(shell::say);
      return Exit.INFEASIBLE;
    }
    SwapWords words = new SwapWords(from, at, catalogue);
    Exercise exercise = chosen.get().exercise();
    Plan swapped = choices.with(chosen.get());
    Plan after = reflow ? reflowed(swapped, at) : swapped;
    if (after.score().hard() < from.score().hard()) {
      words.brokenRules(exercise, after).forEach(shell::say);
      shell.say(
          "No session around it keeps every rule. Maybe take one that is listed without --take.");
      return Exit.INFEASIBLE;
    }
    write(after);
    shell
        .out()
        .print(
            format == Format.JSON
                ? PlanJson.text(after, catalogue)
                : RunSheet.of(after, catalogue, shell.colour(), length.detail()));
    shell.out().flush();
    words.told(exercise, after).forEach(shell::say);
    if (reflow) {
      shell.say("  " + SwapWords.wonBack(swapped, after));
    }
    if (after.canBeLed()) {
      return Exit.DONE;
    }
    shell.say("The session still breaks a rule:");
    Unmet.rules(after, catalogue).forEach(fault -> shell.say("  " + fault));
    return Exit.INFEASIBLE;
  }

  /** The rest planned around the choice; a partner that was found for it may change again. */
  private Plan reflowed(Plan swapped, At at) {
    Reflow planner = new Reflow(catalogue, Version.current());
    return Interruption.during(
        () ->
            Progress.during(
                shell,
                "Planning the rest",
                () -> planner.reflow(swapped, List.of(at), Limit.of(effort))),
        planner::stop);
  }

  private void write(Plan after) {
    WriteFiles.write(
        files, new Handout(after, catalogue, catalogues.pictures(shell), length.detail()), shell);
  }
}
