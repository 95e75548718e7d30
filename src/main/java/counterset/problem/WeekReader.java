package counterset.problem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Schemas;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.WeekProblem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Reads week files against a catalogue: each session is read as the problem that it makes together
 * with what is shared.
 */
public final class WeekReader {

  private final ProblemReader problems;
  private final WeekRules rules;

  /**
   * A reader for one catalogue.
   *
   * @param constraintIds the constraints of the week whose weights a file may change
   */
  public WeekReader(ProblemReader problems, Catalogue catalogue, Set<String> constraintIds) {
    this.problems = problems;
    this.rules = new WeekRules(catalogue, constraintIds);
  }

  /** Whether a document is a week and not the problem of one session. */
  public static boolean isWeek(JsonDocument document) {
    JsonNode tree = document.tree();
    return tree.has("week") || tree.has("sessions") && !tree.has("targets");
  }

  /** Whether a document is the problem, or the plan, of one session. */
  public static boolean isSession(JsonDocument document) {
    return document.tree().has("problem") && !isWeek(document);
  }

  /**
   * Reads a week file.
   *
   * @throws InvalidInputException with all its faults
   */
  public WeekProblem read(Path file) {
    return read(JsonFiles.read(file), "");
  }

  /**
   * Reads the week that a pointer leads to; empty text for the whole document.
   *
   * @throws InvalidInputException with all its faults
   */
  public WeekProblem read(JsonDocument document, String pointer) {
    Faults faults = new Faults(document);
    faults.settle(Schemas.validate(document, pointer, "week"));
    Cursor week = Cursor.at(faults, pointer);
    rules.check(week);
    List<Problem> sessions = sessions(document, pointer, faults);
    faults.throwIfAny();
    return WeekValues.read(week, sessions);
  }

  /** Every session that can be read; the faults of the others go to where the values stand. */
  private List<Problem> sessions(JsonDocument document, String pointer, Faults faults) {
    JsonNode shared = document.at(pointer + "/shared");
    ObjectNode whole = Json.object();
    ArrayNode list = whole.putArray("sessions");
    document.at(pointer + "/sessions").forEach(session -> list.add(joined(shared, session)));
    JsonDocument joined = JsonDocument.of(document.file(), whole);
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      String place = "/sessions/" + i;
      if (!document.at(pointer + place).isObject()) {
        continue;
      }
      try {
        problems.add(this.problems.read(joined, place));
      } catch (InvalidInputException e) {
        for (Violation violation : e.violations()) {
          String rest = violation.pointer().substring(place.length());
          faults.add(
              pointer + (isShared(document, pointer, place, rest) ? "/shared" : place) + rest,
              violation.message());
        }
      }
    }
    return problems;
  }

  private static boolean isShared(
      JsonDocument document, String pointer, String place, String rest) {
    int end = rest.indexOf('/', 1);
    String field = end < 0 ? rest : rest.substring(0, end);
    return document.at(pointer + place + field).isMissingNode()
        && !document.at(pointer + "/shared" + field).isMissingNode();
  }

  private static ObjectNode joined(JsonNode shared, JsonNode session) {
    ObjectNode joined = Json.object().put("problem", ProblemJson.VERSION);
    shared.properties().forEach(field -> joined.set(field.getKey(), field.getValue()));
    session.properties().forEach(field -> joined.set(field.getKey(), field.getValue()));
    joined.remove("day");
    return joined;
  }
}
