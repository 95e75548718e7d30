package counterset.problem;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads week plans, edited ones included: the problem and the sessions only. */
public final class WeekPlanReader {

  private final WeekReader weeks;
  private final PlanFileReader plans;

  public WeekPlanReader(WeekReader weeks, PlanFileReader plans) {
    this.weeks = weeks;
    this.plans = plans;
  }

  /** Whether a document is a planned week. */
  public static boolean isWeekPlan(JsonDocument document) {
    return document.tree().has("week") && document.tree().has("problem");
  }

  /**
   * Reads a week plan.
   *
   * @throws InvalidInputException with all its faults
   */
  public WeekPlanFile read(Path file) {
    return read(JsonFiles.read(file));
  }

  /**
   * Reads a week plan.
   *
   * @throws InvalidInputException with all its faults
   */
  public WeekPlanFile read(JsonDocument document) {
    Faults faults = new Faults(document);
    if (!isWeekPlan(document)) {
      throw InvalidInputException.of(
          document.file(),
          "This is no week plan, which has week and problem. Maybe name one that was written with"
              + " --write FILE.json.");
    }
    Optional<WeekProblem> problem = Optional.empty();
    try {
      problem = Optional.of(weeks.read(document, "/problem"));
    } catch (InvalidInputException e) {
      faults.settle(e.violations());
    }
    List<PlanFile> read = new ArrayList<>();
    Cursor sessions = Cursor.at(faults, "/sessions");
    for (Cursor session : sessions.elements()) {
      plan(document, session.field("plan"), faults).ifPresent(read::add);
    }
    problem.ifPresent(week -> days(sessions, week));
    faults.throwIfAny();
    return new WeekPlanFile(problem.orElseThrow(), read);
  }

  private Optional<PlanFile> plan(JsonDocument document, Cursor plan, Faults faults) {
    String pointer = plan.pointer();
    try {
      return Optional.of(plans.read(JsonDocument.of(document.file(), document.at(pointer))));
    } catch (InvalidInputException e) {
      e.violations().forEach(it -> faults.add(pointer + it.pointer(), it.message()));
      return Optional.empty();
    }
  }

  private static void days(Cursor sessions, WeekProblem week) {
    List<String> wanted = week.sessions().stream().map(WeekSession::day).map(WeekJson::id).toList();
    List<String> found =
        sessions.elements().stream().flatMap(it -> it.field("day").text().stream()).toList();
    if (!wanted.equals(found)) {
      sessions.fault(
          "The sessions are for ("
              + String.join(", ", found)
              + "), but the problem asks for ("
              + String.join(", ", wanted)
              + "). Plan such a change anew.");
    }
  }
}
