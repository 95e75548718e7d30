package counterset.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.json.Violation;
import counterset.model.Plan;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tracks of a class in a plan file. */
class TrackJsonTest {

  private static final Plan PLAN = ClassPlans.good();

  private final ObjectNode json = PlanJson.write(PLAN, Plans.CATALOGUE);

  private JsonNode work(int number) {
    List<JsonNode> work = new ArrayList<>();
    json.get("timeline").forEach(it -> work.add(it));
    work.removeIf(interval -> !interval.get("kind").asText().equals("work"));
    return work.get(number);
  }

  @Test
  void workIntervalsNameWhatSomeDoInstead() {
    assertThat(work(0).get("modifications").toString())
        .isEqualTo(
            "[{\"limitation\":\"sore-knees\",\"exercise\":\"goblet-partial-squat\"},"
                + "{\"limitation\":\"no-floor+sore-knees\",\"exercise\":\"goblet-partial-squat\"}]");
    assertThat(work(1).has("modifications")).isFalse();
    assertThat(work(3).get("modifications")).isEqualTo(work(2).get("modifications"));
  }

  @Test
  void everyTrackHasItsWholeSession() {
    assertThat(json.get("tracks")).hasSize(3);
    for (JsonNode track : json.get("tracks")) {
      assertThat(track.fieldNames())
          .toIterable()
          .containsExactly(
              "limitations",
              "modifications",
              "timeline",
              "coverage",
              "changeovers",
              "equipmentList",
              "cautions",
              "score");
      assertThat(track.get("timeline")).hasSameSizeAs(json.get("timeline"));
      for (int i = 0; i < track.get("timeline").size(); i++) {
        JsonNode own = track.get("timeline").get(i);
        JsonNode all = json.get("timeline").get(i);
        for (String same : List.of("start", "end", "kind")) {
          assertThat(own.get(same)).isEqualTo(all.get(same));
        }
        assertThat(own.has("say")).isFalse();
      }
    }
  }

  @Test
  void aModificationNamesItsPlaceAndWhatItReplaces() {
    assertThat(json.at("/tracks/1/modifications").toString())
        .isEqualTo(
            "[{\"at\":{\"superset\":3,\"position\":\"A\"},\"insteadOf\":\"mountain-climber\","
                + "\"exercise\":\"slow-mountain-climber\"}]");
  }

  @Test
  void theSchemaKnowsTracksAndNothingElse() {
    assertThat(validate()).isEmpty();
    ((ObjectNode) json.at("/tracks/0")).put("name", "sore-knees");
    ((ObjectNode) json.at("/tracks/1/modifications/0")).remove("insteadOf");
    assertThat(validate()).extracting(Violation::pointer).hasSize(2);
  }

  private List<Violation> validate() {
    return Schemas.validate(JsonDocument.parse("plan.json", Json.pretty(json)), "plan");
  }

  @Test
  void differencesOfTracksAreFound() {
    ((ObjectNode) json.at("/tracks/0/score")).put("soft", 999);
    ((ArrayNode) json.at("/tracks/1/cautions")).remove(0);
    assertThat(
            PlanDifferences.of(
                JsonDocument.parse("plan.json", Json.pretty(json)), PLAN, Plans.CATALOGUE))
        .extracting(Violation::pointer)
        .contains("/tracks/0/score/soft", "/tracks/1/cautions");
  }

  @Test
  void anIntervalWithoutModificationsMayNotHaveAny() {
    ((ObjectNode) json.at("/timeline/5")).putArray("modifications");
    JsonNode kind = json.at("/timeline/5/kind");
    List<Violation> differences =
        PlanDifferences.of(
            JsonDocument.parse("plan.json", Json.pretty(json)), PLAN, Plans.CATALOGUE);
    assertThat(differences).as(kind.asText()).hasSize(1);
  }
}
