package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.journal.Entry;
import counterset.journal.EntryJson;
import counterset.json.Json;
import counterset.report.Numbers;
import counterset.training.Energy;
import counterset.training.EnergyTotal;
import counterset.training.SessionLoad;
import counterset.training.Summary;
import counterset.training.Week;
import counterset.training.WeeklySets;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/** What a journal holds and comes to. Figures have at most two decimals. */
public final class LogJson {

  private static final String MONOTONY =
      "mean of the seven daily loads / their population standard deviation; days without a session"
          + " count as 0";

  private LogJson() {}

  /** One entry with its session load. */
  public static String entry(Entry entry) {
    return Json.pretty(write(entry));
  }

  /** All entries. */
  public static String list(List<Entry> entries) {
    ObjectNode json = Json.object();
    ArrayNode list = json.putArray("entries");
    entries.forEach(entry -> list.add(write(entry)));
    return Json.pretty(json);
  }

  private static ObjectNode write(Entry entry) {
    ObjectNode json = EntryJson.write(entry);
    put(json, "sessionLoad", SessionLoad.of(entry));
    return json;
  }

  /** A summary; monotony and strain are absent where the days are all the same. */
  public static String summary(Summary summary) {
    ObjectNode json = Json.object();
    json.set("weeks", Nodes.objects(summary.weeks(), LogJson::week));
    json.set("muscles", Nodes.objects(summary.muscles(), LogJson::sets));
    EnergyTotal energy = summary.energy();
    ObjectNode part = json.putObject("energy");
    put(part, "metMinutes", energy.metMinutes());
    if (energy.weighed() > 0) {
      put(part, "kcal", energy.kcal());
    }
    part.put("sessions", energy.sessions()).put("sessionsWithMass", energy.weighed());
    json.putObject("definitions")
        .put("load", "RPE (CR-10) x minutes of the whole session (Foster 2001)")
        .put("monotony", MONOTONY + " (Foster 1998)")
        .put("strain", "load x monotony (Foster 1998)")
        .put("sets", "direct + 0.5 indirect (Pelland 2024)")
        .put("range", "at least 4 (Iversen 2021); below 5, 5 to 9, 10 or more (Schoenfeld 2017)")
        .put(
            "energy",
            Energy.FORMULA + " (ACSM), gross; METs of the Compendium of Physical Activities");
    return Json.pretty(json);
  }

  private static void week(Week week, ObjectNode json) {
    json.put("first", week.first().toString())
        .put("last", week.last().toString())
        .put("sessions", week.entries().size())
        .put("minutes", week.minutes());
    put(json, "load", week.load());
    ArrayNode daily = json.putArray("daily");
    week.daily().forEach(load -> daily.add(decimal(load)));
    put(json, "monotony", week.monotony());
    put(json, "strain", week.strain());
  }

  private static void sets(WeeklySets sets, ObjectNode json) {
    json.put("muscle", sets.muscle()).put("direct", sets.direct()).put("indirect", sets.indirect());
    put(json, "sets", sets.sets());
    json.put("days", sets.days()).put("range", sets.range().words());
  }

  private static void put(ObjectNode json, String name, OptionalDouble number) {
    if (number.isPresent()) {
      put(json, name, number.getAsDouble());
    }
  }

  static void put(ObjectNode json, String name, double number) {
    json.put(name, decimal(number));
  }

  private static BigDecimal decimal(double number) {
    return new BigDecimal(Numbers.rounded(number, 2));
  }
}
