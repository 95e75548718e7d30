package counterset.cli;

import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.report.PlanAccount;
import counterset.report.json.AccountJson;
import counterset.report.text.AccountSheet;
import counterset.report.text.ConstraintList;
import counterset.review.AccountMaker;
import counterset.score.Constraints;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says where every point of a plan comes from, and why each exercise is where it is. */
@Command(
    name = "explain",
    description =
        "Says where every point of a plan comes from, which exercises came close at each place,"
            + " what the limitations keep out, and how far from the best possible the plan is.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  counterset explain tuesday.json",
      "  counterset explain --constraints",
      "",
      "Exit status: 0 the session keeps every rule; 2 bad usage or bad input; 3 it breaks a rule."
    })
final class ExplainCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(arity = "0..1", paramLabel = "PLAN", description = "A plan file (.json).")
  private String file;

  @Option(
      names = "--constraints",
      description = "List all constraints with their weights instead; needs no plan.")
  private boolean constraints;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  ExplainCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    if (constraints == (file != null)) {
      throw new BadRequest(
          file == null
              ? "PLAN is missing. Maybe: counterset explain tuesday.json, or --constraints."
              : "--constraints is about no plan. Leave out " + file + ", or --constraints.");
    }
    return constraints ? constraints() : plan();
  }

  private int constraints() {
    shell
        .out()
        .print(
            format == Format.JSON
                ? AccountJson.constraints(Constraints.all())
                : ConstraintList.of(Constraints.all(), shell.colour()));
    return Exit.DONE;
  }

  private int plan() {
    Catalogue catalogue = catalogues.load(shell);
    PlanSource source = PlanSource.read(shell, file, catalogue);
    source.tell(shell, file);
    PlanAccount account =
        Progress.during(
            shell,
            "Explaining",
            () -> new AccountMaker(source.plan(), catalogue, Version.current()).account());
    shell
        .out()
        .print(
            format == Format.JSON
                ? AccountJson.text(account)
                : AccountSheet.of(account, shell.colour()));
    shell.out().flush();
    return source.plan().canBeLed() ? Exit.DONE : Exit.INFEASIBLE;
  }
}
