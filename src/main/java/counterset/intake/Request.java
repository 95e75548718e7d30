package counterset.intake;

import counterset.ask.AskFault;
import counterset.ask.AskReader;
import counterset.ask.AskReading;
import counterset.ask.WeekAskReader;
import counterset.ask.WeekAskReading;
import counterset.json.BadRequest;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.WeekProblem;
import counterset.problem.WeekPlanReader;
import counterset.problem.WeekReader;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a coach asked for, read from one line or from a file.
 *
 * @param problem of a session or of a week
 * @param echo how it was read, one plain line a topic; empty for a file, which says everything
 *     itself
 */
public record Request<P>(P problem, List<String> echo) {

  /**
   * Reads what is asked of a session: the name of a problem file, or an ask.
   *
   * @param folder what relative paths start from
   * @throws BadRequest with all faults of the ask
   */
  public static Request<Problem> session(List<String> words, Catalogue catalogue, Path folder) {
    String text = String.join(" ", words);
    if (isFile(text, folder)) {
      return new Request<>(Readers.problems(catalogue).read(folder.resolve(text)), List.of());
    }
    AskReading reading = new AskReader(catalogue).read(text);
    Request<Problem> request = of(reading.problem(), reading.echo(), reading.faults());
    Assumptions all = Assumptions.of(reading, request.problem(), catalogue);
    return new Request<>(all.problem(), all.echo());
  }

  /**
   * Reads what is asked of a week: the name of a week file, or an ask.
   *
   * @param folder what relative paths start from
   * @throws BadRequest with all faults of the ask, or for a file of another kind
   */
  public static Request<WeekProblem> week(List<String> words, Catalogue catalogue, Path folder) {
    String text = String.join(" ", words);
    if (isFile(text, folder)) {
      return new Request<>(week(text, catalogue, folder), List.of());
    }
    WeekAskReading reading = new WeekAskReader(catalogue).read(text);
    return of(reading.problem(), reading.echo(), reading.faults());
  }

  private static <P> Request<P> of(Optional<P> problem, List<String> echo, List<AskFault> faults) {
    return new Request<>(
        problem.orElseThrow(
            () ->
                new BadRequest(
                    faults.stream()
                        .map(it -> "ask, column " + it.column() + ": " + it.message())
                        .toList())),
        echo);
  }

  private static WeekProblem week(String text, Catalogue catalogue, Path folder) {
    JsonDocument document = JsonFiles.read(folder.resolve(text));
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
    return Readers.weeks(catalogue).read(document, "");
  }

  /** An ask is never the name of something that exists, nor does it end like a file of problems. */
  public static boolean isFile(String text, Path folder) {
    if (text.endsWith(".json")) {
      return true;
    }
    try {
      return !text.isBlank() && Files.exists(folder.resolve(text));
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
