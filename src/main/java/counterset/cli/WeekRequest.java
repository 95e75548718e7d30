package counterset.cli;

import counterset.ask.WeekAskReader;
import counterset.ask.WeekAskReading;
import counterset.json.BadRequest;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.Catalogue;
import counterset.model.WeekProblem;
import counterset.planning.constraints.WeekConstraint;
import counterset.problem.WeekPlanReader;
import counterset.problem.WeekReader;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a coach asked of a week, read from one line or from a week file.
 *
 * @param echo how it was read; empty for a file, which says everything itself
 */
record WeekRequest(WeekProblem problem, List<String> echo) {

  /** Reads words from the command line: the name of a file, or an ask. */
  static WeekRequest read(List<String> words, Catalogue catalogue, Shell shell) {
    String text = String.join(" ", words);
    if (Request.isFile(text, shell)) {
      return new WeekRequest(file(text, catalogue, shell), List.of());
    }
    WeekAskReading reading = new WeekAskReader(catalogue).read(text);
    if (reading.problem().isEmpty()) {
      throw new BadRequest(reading.faults().stream().map(Request::line).toList());
    }
    return new WeekRequest(reading.problem().get(), reading.echo());
  }

  private static WeekProblem file(String text, Catalogue catalogue, Shell shell) {
    JsonDocument document = JsonFiles.read(shell.path(text));
    if (WeekPlanReader.isWeekPlan(document)) {
      throw new BadRequest(
          text
              + ": is a planned week. Name the days to plan anew with --redo, such as --redo"
              + " monday; the others stay as they are.");
    }
    if (WeekReader.isSession(document)) {
      throw new BadRequest(
          text + ": is the problem of one session. Maybe: counterset plan " + text);
    }
    return weeks(catalogue).read(document, "");
  }

  /** Reads weeks whose weights may name the constraints of a week. */
  static WeekReader weeks(Catalogue catalogue) {
    Set<String> constraints = new LinkedHashSet<>();
    for (WeekConstraint constraint : WeekConstraint.values()) {
      constraints.add(constraint.id());
    }
    return new WeekReader(Request.problems(catalogue), catalogue, constraints);
  }
}
