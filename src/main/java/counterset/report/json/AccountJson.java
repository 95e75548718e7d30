package counterset.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Account;
import counterset.json.Json;
import counterset.model.PlanScore;
import counterset.report.PlanAccount;
import counterset.score.Constraint;
import java.util.List;

/** Writes a plan explained, and the catalogue of constraints. */
public final class AccountJson {

  private final PlanAccount all;

  private AccountJson(PlanAccount all) {
    this.all = all;
  }

  /** A plan explained. */
  public static String text(PlanAccount account) {
    return Json.pretty(new AccountJson(account).write());
  }

  /** The catalogue of constraints. */
  public static String constraints(List<Constraint> constraints) {
    ObjectNode json = Json.object();
    json.set("constraints", Nodes.objects(constraints, AccountJson::constraint));
    return Json.pretty(json);
  }

  private static void constraint(Constraint constraint, ObjectNode json) {
    json.put("id", constraint.id())
        .put("scope", constraint.scope())
        .put("level", constraint.level().id())
        .put("weight", constraint.defaultWeight())
        .put("reward", constraint.isReward())
        .put("sentence", constraint.sentence())
        .put("unit", constraint.unit());
  }

  private ObjectNode write() {
    ObjectNode json = Json.object().put("explanation", 1);
    json.put("title", all.plan().problem().title());
    PlanScore score = all.plan().score();
    json.set("score", DifferenceJson.points(score, 0, 0, 0));
    all.plan().bound().ifPresent(bound -> json.set("bound", ScoreJson.bound(bound, score)));
    json.put("limit", all.limit());
    json.set("sections", Nodes.objects(all.account().sections(), AccountJson::section));
    json.set("places", Nodes.objects(all.places(), this::place));
    json.set("keptOut", Nodes.objects(all.keptOut(), AccountJson::kept));
    json.set("narrowed", Nodes.texts(all.narrowed()));
    return json;
  }

  private static void section(Account.Section section, ObjectNode json) {
    section.superset().ifPresent(number -> json.put("superset", number));
    json.put("title", section.title());
    json.set("lines", Nodes.objects(section.lines(), AccountJson::line));
    json.set("notes", Nodes.texts(section.notes()));
  }

  private static void line(Account.Line line, ObjectNode json) {
    json.put("constraint", line.constraint())
        .put("level", line.level())
        .put("points", line.points());
    json.set("places", DifferenceJson.places(line.places()));
    json.put("sentence", line.sentence());
  }

  private void place(PlanAccount.Place place, ObjectNode json) {
    json.put("at", place.at().toString())
        .put("exercise", place.exercise().id())
        .put("kept", place.isKept());
    json.set("runnersUp", Nodes.objects(place.runnersUp(), this::runnerUp));
  }

  private void runnerUp(PlanAccount.RunnerUp other, ObjectNode json) {
    PlanScore now = all.plan().score();
    json.put("exercise", other.exercise().id()).put("name", other.exercise().name());
    other.partner().ifPresent(partner -> json.put("partner", partner.id()));
    json.set("change", DifferenceJson.points(other.score(), now.hard(), now.medium(), now.soft()));
    json.set("differences", Nodes.objects(other.differences(), DifferenceJson::write));
  }

  private static void kept(PlanAccount.Kept kept, ObjectNode json) {
    json.put("limitation", kept.id())
        .put("name", kept.name())
        .put("source", kept.source())
        .put("exercises", kept.number());
    json.set("first", Nodes.texts(kept.first()));
  }
}
