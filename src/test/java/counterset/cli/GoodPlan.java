package counterset.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.fixture.FixedCatalogue;
import counterset.intake.Readers;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.report.json.PlanJson;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A plan without a fault, written by hand so that no search can change it, for tests to break by
 * one edit each.
 */
final class GoodPlan {

  static final Catalogue CATALOGUE = FixedCatalogue.CATALOGUE;

  private static final String PROBLEM =
      """
      {"problem": 1, "title": "Good", "minutes": 20, "targets": [{"muscle": "lower"}],
       "equipment": [{"id": "dumbbell", "count": 2}, {"id": "ankle-weights"}],
       "limitations": ["sore-knees"], "exclude": ["lunge"],
       "keep": [{"at": "1A", "exercise": "dumbbell-romanian-deadlift"}]}
      """;

  private static final String[] SUPERSETS = {
    "dumbbell-romanian-deadlift dumbbell-partial-squat",
    "suitcase-deadlift suitcase-deadlift",
    "dumbbell-partial-sumo-squat dumbbell-wide-stance-calf-raise",
    "ankle-weight-side-leg-raise sumo-floor-pull",
    "ankle-weight-standing-hydrant-wall ankle-weight-standing-hydrant-wall",
    "ankle-weight-front-leg-raise ankle-weight-leg-curl",
    "ankle-weight-inner-thigh-lift ankle-weight-inner-thigh-lift",
    "ankle-weight-raised-clam ankle-weight-raised-clam",
  };

  private static final String TEXT = text();

  private GoodPlan() {}

  private static String text() {
    Problem problem = Readers.problems(CATALOGUE).read(JsonDocument.parse("", PROBLEM), "");
    List<Superset> supersets = new ArrayList<>();
    for (String ids : SUPERSETS) {
      supersets.add(new Superset(supersets.size() + 1, exercises(ids)));
    }
    Session session =
        new Session(
            exercises("warm-march warm-heel-peel warm-side-step warm-heel-curl warm-mini-squat"),
            supersets,
            List.of());
    Plan plan =
        new SessionPlanner(CATALOGUE, "test")
            .score(problem, session, new SolverNote(1, "none", "test", 0, true));
    return PlanJson.text(plan, CATALOGUE);
  }

  private static List<Exercise> exercises(String ids) {
    return Stream.of(ids.split(" ")).map(CATALOGUE.exercises()::get).toList();
  }

  /** The whole plan file, afresh. */
  static ObjectNode whole() {
    return (ObjectNode) JsonDocument.parse("", TEXT).tree();
  }

  /** The decisions only, as somebody would write them by hand, afresh. */
  static ObjectNode byHand() {
    ObjectNode whole = whole();
    ObjectNode plan = Json.object().put("plan", 1);
    plan.set("problem", whole.get("problem"));
    ArrayNode supersets = plan.putArray("supersets");
    for (JsonNode superset : whole.get("supersets")) {
      supersets
          .addObject()
          .put("number", superset.get("number").intValue())
          .set("exercises", superset.get("exercises"));
    }
    return plan;
  }

  /** The exercises of a superset, to change. */
  static ArrayNode exercises(ObjectNode plan, int superset) {
    return (ArrayNode) plan.at("/supersets/" + (superset - 1) + "/exercises");
  }

  /** Puts an exercise at a place such as 3A. */
  static void put(ObjectNode plan, String at, String exercise) {
    int superset = Integer.parseInt(at.substring(0, at.length() - 1));
    exercises(plan, superset).set(at.charAt(at.length() - 1) - 'A', exercise);
  }

  /** An object of the plan, to change. */
  static ObjectNode object(ObjectNode plan, String pointer) {
    return (ObjectNode) plan.at(pointer);
  }

  /** A list of the plan, to change. */
  static ArrayNode list(ObjectNode plan, String pointer) {
    return (ArrayNode) plan.at(pointer);
  }
}
