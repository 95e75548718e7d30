package counterset.problem;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes weeks with every field of every session resolved, as week plans echo them. Reading the
 * result gives an equal week.
 */
public final class WeekJson {

  private WeekJson() {}

  /** The word that files use for a day. */
  public static String id(DayOfWeek day) {
    return day.name().toLowerCase(Locale.ROOT);
  }

  /** All fields but {@code shared}, which the sessions already have in them. */
  public static ObjectNode write(WeekProblem week) {
    ObjectNode json = Json.object().put("week", 1).put("title", week.title());
    ArrayNode sessions = json.putArray("sessions");
    for (WeekSession session : week.sessions()) {
      ObjectNode fields = Json.object().put("day", id(session.day()));
      fields.setAll(ProblemJson.write(session.problem()));
      sessions.add(fields);
    }
    ArrayNode earlier = json.putArray("earlier");
    week.earlier().forEach(session -> earlier(session, earlier.addObject()));
    ObjectNode ranges = json.putObject("setRanges");
    new TreeMap<>(week.setRanges())
        .forEach(
            (muscle, range) ->
                ranges.putObject(muscle).put("least", range.least()).put("most", range.most()));
    json.put("recoveryIsRule", week.recoveryIsRule());
    numbers(week.weights(), json.putObject("weights"));
    return json.put("seed", week.seed());
  }

  private static void earlier(EarlierSession session, ObjectNode json) {
    json.put("daysBeforeMonday", session.daysBeforeMonday());
    ArrayNode exercises = json.putArray("exercises");
    session.exercises().forEach(exercises::add);
    numbers(session.directSets(), json.putObject("directSets"));
  }

  /** By name: the maps of a week keep no order. */
  private static void numbers(Map<String, Integer> numbers, ObjectNode json) {
    new TreeMap<>(numbers).forEach(json::put);
  }
}
