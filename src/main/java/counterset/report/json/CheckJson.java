package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.json.Violation;
import counterset.model.Plan;
import counterset.report.BetterPlan;
import counterset.typed.Taken;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes what was found out about a plan. */
public final class CheckJson {

  private final ObjectNode json = Json.object();

  private CheckJson() {}

  /**
   * The verdict and the score of a plan.
   *
   * @param feasible whether it keeps every rule
   * @param faults every broken rule, a sentence each
   * @param wishes every unmet wish, a sentence each
   * @param differences what the file says otherwise than its session works out to
   */
  public static CheckJson of(
      Plan plan,
      boolean feasible,
      List<String> faults,
      List<String> wishes,
      List<Violation> differences) {
    CheckJson check = new CheckJson();
    check.json.put("feasible", feasible);
    check.json.set("faults", Nodes.texts(faults));
    check.json.set("wishes", Nodes.texts(wishes));
    check.json.set(
        "differences",
        Nodes.objects(
            differences,
            (difference, node) -> {
              node.put("pointer", difference.pointer());
              difference.line().ifPresent(line -> node.put("line", line));
              node.put("message", difference.message());
            }));
    check.json.set("score", ScoreJson.write(plan.score()));
    return check;
  }

  /** Adds what each line of a typed session was taken for, and what it was judged by. */
  public CheckJson typed(List<Taken> lines, List<String> readAs) {
    json.set("lines", Nodes.objects(lines, CheckJson::line));
    json.set("readAs", Nodes.texts(readAs));
    return this;
  }

  private static void line(Taken taken, ObjectNode node) {
    node.put("line", taken.line()).put("column", taken.column()).put("typed", taken.typed());
    if (!taken.place().isEmpty()) {
      node.put("place", taken.place());
    }
    node.put("as", taken.as());
    if (!taken.exercise().isEmpty()) {
      node.put("exercise", taken.exercise());
    }
  }

  /** Adds the best single change; null if no change makes the session better. */
  public CheckJson bestChange(Optional<BetterPlan> best) {
    if (best.isEmpty()) {
      json.putNull("bestChange");
      return this;
    }
    ObjectNode node = json.putObject("bestChange");
    node.set("places", DifferenceJson.places(best.get().changed()));
    node.set("changes", Nodes.texts(best.get().changes()));
    node.put("worth", best.get().worth());
    node.set("differences", Nodes.objects(best.get().differences(), DifferenceJson::write));
    node.set("score", ScoreJson.write(best.get().to().score()));
    return this;
  }

  /** The text on several lines. */
  public String text() {
    return Json.pretty(json);
  }

  /** The text of several checks by the day of each, and what the week itself breaks. */
  public static String week(
      boolean feasible, List<String> faults, List<String> wishes, Map<String, CheckJson> days) {
    ObjectNode week = Json.object().put("feasible", feasible);
    week.set("faults", Nodes.texts(faults));
    week.set("wishes", Nodes.texts(wishes));
    ArrayNode sessions = week.putArray("sessions");
    days.forEach((day, check) -> sessions.addObject().put("day", day).set("check", check.json));
    return Json.pretty(week);
  }
}
