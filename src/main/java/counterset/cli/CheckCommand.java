package counterset.cli;

import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.problem.PlanFile;
import counterset.problem.PlanFileReader;
import counterset.report.json.CheckJson;
import counterset.report.json.PlanDifferences;
import counterset.report.text.ScoreTable;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Recomputes and scores a plan, whoever wrote it, and says what breaks and where. */
@Command(
    name = "check",
    description =
        "Recomputes and scores a plan, one edited by hand included; says what breaks and where.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit status: 0 the session keeps every rule; 2 the file cannot be read or contradicts itself;",
      "3 the session breaks a rule."
    })
final class CheckCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(arity = "1", paramLabel = "PLAN", description = "A plan file (.json).")
  private String file;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  CheckCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    Catalogue catalogue = catalogues.load(shell);
    PlanFile read =
        new PlanFileReader(Request.problems(catalogue), catalogue).read(shell.path(file));
    Plan plan = new Recheck(read, catalogue).plan();
    List<String> faults = Feasibility.hardFaults(plan, catalogue);
    List<Violation> differences = PlanDifferences.of(read.document(), plan, catalogue);
    List<String> wishes = Feasibility.unmetWishes(plan, catalogue);
    boolean feasible = faults.isEmpty() && Feasibility.isFeasible(plan);
    if (format == Format.JSON) {
      shell.out().print(CheckJson.text(plan, feasible, faults, wishes, differences));
    } else {
      print(feasible, faults, wishes, differences);
      shell.out().print(ScoreTable.of(plan, catalogue, shell.colour()));
    }
    return feasible ? differences.isEmpty() ? Exit.DONE : Exit.BAD_INPUT : Exit.INFEASIBLE;
  }

  private void print(
      boolean feasible, List<String> faults, List<String> wishes, List<Violation> differences) {
    line(feasible ? "The session keeps every rule." : "The session breaks a rule.");
    faults.forEach(fault -> line("  " + fault));
    if (!wishes.isEmpty()) {
      line("Unmet wishes:");
      wishes.forEach(wish -> line("  " + wish));
    }
    if (!differences.isEmpty()) {
      line("The file says something else than its session works out to:");
      differences.forEach(difference -> line("  " + difference));
    }
  }

  private void line(String text) {
    shell.out().print(text + "\n");
  }
}
