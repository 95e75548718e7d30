package counterset.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.problem.PlanFile;
import counterset.problem.PlanFileReader;
import counterset.problem.PlannedSuperset;
import counterset.problem.ProblemReader;
import counterset.report.Golden;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanJsonTest {

  @Test
  void looksAsAgreed() {
    Map<String, String> plans = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> plans.put(name, PlanJson.text(plan, Plans.CATALOGUE)));
    Golden.check("planjson", ".json", plans);
  }

  @TestFactory
  Stream<DynamicTest> anyPlanFitsTheSchemaAndAddsUp() {
    Stream<DynamicTest> written =
        Plans.all().entrySet().stream()
            .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getValue())));
    Stream<DynamicTest> random =
        Stream.iterate(1L, seed -> seed + 1)
            .limit(150)
            .map(
                seed -> DynamicTest.dynamicTest("seed " + seed, () -> check(RandomPlans.of(seed))));
    return Stream.concat(written, random);
  }

  private static void check(Plan plan) {
    String text = PlanJson.text(plan, Plans.CATALOGUE);
    JsonDocument document = JsonDocument.parse("plan.json", text);
    assertThat(Schemas.validate(document, "plan")).isEmpty();
    JsonNode json = document.tree();
    assertThat(names(json))
        .containsExactly(
            "plan",
            "problem",
            "score",
            "timeline",
            "supersets",
            "coverage",
            "patterns",
            "changeovers",
            "tracks",
            "equipmentList",
            "totals",
            "cautions",
            "solver");
    constraintsAddUp(json.get("score"));
    timelineIsContiguous(json);
    for (JsonNode target : json.get("coverage")) {
      assertThat(target.get("sets").asDouble())
          .isEqualTo(target.get("direct").asInt() + 0.5 * target.get("indirect").asInt());
      assertThat(target.get("credit").asDouble())
          .isBetween(target.get("sets").asDouble() / 2, target.get("sets").asDouble());
      assertThat(target.get("working").asInt()).isBetween(0, target.get("direct").asInt());
    }
  }

  private static void constraintsAddUp(JsonNode score) {
    Map<String, Integer> sums = new LinkedHashMap<>(Map.of("hard", 0, "medium", 0, "soft", 0));
    for (JsonNode constraint : score.get("constraints")) {
      sums.merge(constraint.get("level").asText(), constraint.get("score").asInt(), Integer::sum);
    }
    sums.forEach((level, sum) -> assertThat(score.get(level).asInt()).as(level).isEqualTo(sum));
    assertThat(score.get("feasible").asBoolean()).isEqualTo(score.get("hard").asInt() >= 0);
  }

  private static void timelineIsContiguous(JsonNode json) {
    int now = 0;
    for (JsonNode interval : json.get("timeline")) {
      assertThat(interval.get("start").asInt()).isEqualTo(now);
      now = interval.get("end").asInt();
      assertThat(interval.get("say").asText()).isNotBlank();
    }
    assertThat(json.at("/totals/seconds").asInt()).isEqualTo(now);
    int cap = 60 * json.at("/problem/minutes").asInt();
    assertThat(json.at("/totals/unusedSeconds").asInt()).isEqualTo(cap - now);
  }

  @ParameterizedTest
  @ValueSource(strings = {"legs", "upper-rounds", "broken", "class"})
  void whatIsWrittenCanBeReadAgain(String name) {
    Plan plan = Plans.all().get(name);
    Set<String> ids =
        plan.score().lines().stream().map(PlanScore.Line::id).collect(Collectors.toSet());
    PlanFileReader reader =
        new PlanFileReader(new ProblemReader(Plans.CATALOGUE, ids), Plans.CATALOGUE);
    PlanFile file =
        reader.read(JsonDocument.parse("plan.json", PlanJson.text(plan, Plans.CATALOGUE)));
    assertThat(file.problem()).isEqualTo(plan.problem());
    assertThat(file.supersets().stream().map(PlannedSuperset::exercises).toList())
        .isEqualTo(
            plan.session().supersets().stream()
                .map(superset -> ids(superset.exercises()))
                .toList());
    assertThat(file.warmUp()).isEqualTo(ids(plan.session().warmUp()));
    assertThat(file.coolDown()).isEqualTo(ids(plan.session().coolDown()));
  }

  private static List<String> ids(List<Exercise> exercises) {
    return exercises.stream().map(Exercise::id).toList();
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    assertThat(PlanJson.text(Plans.legs(), Plans.CATALOGUE))
        .isEqualTo(PlanJson.text(Plans.legs(), Plans.CATALOGUE));
  }

  @Test
  void theSchemaHoldsTheProblemSchema() {
    ObjectNode problem = schema("problem");
    JsonNode plan = schema("plan").get("$defs");
    problem
        .remove("$defs")
        .properties()
        .forEach(e -> assertThat(plan.get(e.getKey())).isEqualTo(e.getValue()));
    problem.remove(List.of("$schema", "$id"));
    assertThat(plan.get("problem")).isEqualTo(problem);
  }

  @Test
  void theSchemaIsClosedAtEveryLevel() {
    for (JsonNode object : schema("plan").findParents("properties")) {
      assertThat(object.get("additionalProperties").asText()).isEqualTo("false");
    }
  }

  private static ObjectNode schema(String name) {
    return (ObjectNode) JsonDocument.parse(name, Schemas.text(name)).tree();
  }

  private static List<String> names(JsonNode json) {
    List<String> names = new ArrayList<>();
    json.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
