package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.report.json.LoadJson;
import counterset.report.json.PlanJson;
import counterset.report.text.RunSheet;
import counterset.training.LoadAdvice;
import java.util.List;

/**
 * Prints a plan to the results.
 *
 * @param format the run sheet, or JSON and nothing but JSON
 * @param loads advice on loads; empty if no journal was read
 */
record PlanOutput(Shell shell, Format format, List<LoadAdvice> loads) {

  /** Prints how it was asked, and the plan. */
  void print(Request request, Plan plan, Catalogue catalogue) {
    if (!plan.solver().complete()) {
      shell.say("Interrupted: this is the best plan found so far.");
    }
    if (format == Format.JSON) {
      request.echo().forEach(line -> shell.say("Read as: " + line));
      shell
          .out()
          .print(
              loads.isEmpty()
                  ? PlanJson.text(plan, catalogue)
                  : LoadJson.plan(plan, catalogue, loads));
    } else {
      request.echo().forEach(line -> shell.out().print("Read as: " + line + "\n"));
      shell
          .out()
          .print(
              (request.echo().isEmpty() ? "" : "\n")
                  + RunSheet.of(plan, catalogue, shell.colour(), loads));
    }
  }
}
