package counterset.cli;

import counterset.ask.AskFault;
import counterset.ask.AskReader;
import counterset.ask.AskReading;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.planning.constraints.SessionConstraint;
import counterset.problem.ProblemReader;
import java.nio.file.Files;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a coach asked for, read from one line or from a problem file.
 *
 * @param echo how it was read, one plain line a topic; empty for a file, which says everything
 *     itself
 */
record Request(Problem problem, List<String> echo) {

  /** Reads words from the command line: the name of a file, or an ask. */
  static Request read(List<String> words, Catalogue catalogue, Shell shell) {
    String text = String.join(" ", words);
    if (isFile(text, shell)) {
      return new Request(problems(catalogue).read(shell.path(text)), List.of());
    }
    AskReading reading = new AskReader(catalogue).read(text);
    if (reading.problem().isEmpty()) {
      throw new BadRequest(reading.faults().stream().map(Request::line).toList());
    }
    return new Request(reading.problem().get(), reading.echo());
  }

  /** Reads problems whose weights may name the constraints of a session. */
  static ProblemReader problems(Catalogue catalogue) {
    Set<String> constraints = new LinkedHashSet<>();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      constraints.add(constraint.id());
    }
    return new ProblemReader(catalogue, constraints);
  }

  /** An ask is never the name of something that exists, nor does it end like a file of problems. */
  static boolean isFile(String text, Shell shell) {
    if (text.endsWith(".json")) {
      return true;
    }
    try {
      return !text.isBlank() && Files.exists(shell.path(text));
    } catch (java.nio.file.InvalidPathException e) {
      return false;
    }
  }

  static String line(AskFault fault) {
    return "ask, column " + fault.column() + ": " + fault.message();
  }
}
