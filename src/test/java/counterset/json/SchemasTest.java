package counterset.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.dialect.DialectId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemasTest {

  @Test
  void everyKindOfFaultInOneRunInTheOrderOfTheText() {
    List<String> lines =
        problem(
            """
            { "problem": 2,
              "title": "two\\nlines",
              "minuets": 20,
              "clock": {"work": 0,
                        "swich": 5,
                        "rest": "30"},
              "targets": [],
              "equipment": [{"id": "mat", "kg": [0],
                             "loads": ["hevy"]}],
              "limitations": ["sore-knees", "Sore Knees", "sore-knees"],
              "level": 4,
              "pairing": null,
              "recent": [{"date": "2.3.2026"}],
              "weights": {"floorTrip": -1} }
            """);
    assertThat(lines)
        .containsExactly(
            "p.json:1 /minutes: The property (minutes) is missing.",
            "p.json:1 /problem: The problem (2) must be 1.",
            "p.json:2 /title: The title (two\\u000alines) must be one line of text, not empty and without control"
                + " characters.",
            "p.json:3 /minuets: The property (minuets) is not known here. Maybe \"minutes\"?",
            "p.json:4 /clock/work: The work (0) must be at least 1.",
            "p.json:5 /clock/swich: The property (swich) is not known here. Maybe \"switch\"?",
            "p.json:6 /clock/rest: The rest (30) must be a whole number.",
            "p.json:7 /targets: The targets must have 1 or more elements.",
            "p.json:8 /equipment/0/kg/0: The kg (0) must be above 0.",
            "p.json:9 /equipment/0/loads/0: The loads (hevy) must be one of light, medium, heavy. Maybe \"heavy\"?",
            "p.json:10 /limitations/1: The limitations (Sore Knees) must be an id in lower-kebab-case, such as"
                + " goblet-squat.",
            "p.json:10 /limitations/2: The limitations (sore-knees) is listed twice; keep one.",
            "p.json:11 /level: The level (4) must be at most 3.",
            "p.json:12 /pairing: The pairing (null) must be text.",
            "p.json:13 /recent/0/exercises: The property (exercises) is missing.",
            "p.json:13 /recent/0/date: The date (2.3.2026) must be a date as year, month and day, such as 2026-03-02.",
            "p.json:14 /weights/floorTrip: The floorTrip (-1) must be at least 0.");
  }

  @Test
  void anUnknownPropertyFarFromAllIsToldTheKnownOnes() {
    assertThat(
            problem(
                "{\"problem\": 1, \"minutes\": 20, \"targets\": [{\"muscle\": \"chest\", \"qqqqq\": 1}]}"))
        .containsExactly(
            "p.json:1 /targets/0/qqqqq: The property (qqqqq) is not known here. Known: muscle, emphasis, minSets.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "5", "\"x\"", "null"})
  void wrongKindOfDocument(String text) {
    assertThat(problem(text)).singleElement().asString().contains("must be an object in braces");
  }

  @Test
  void numbersOutOfAllBounds() {
    assertThat(
            problem(
                "{\"problem\": 1, \"minutes\": 1e400, \"targets\": [\"lower\"], \"seed\": 9999999999999999999}"))
        .allMatch(line -> line.contains("/minutes") || line.contains("/seed"))
        .hasSizeGreaterThanOrEqualTo(2);
  }

  @Test
  void partOfADocument() {
    JsonDocument plan =
        JsonDocument.parse("plan.json", "{\"plan\": 1,\n\"problem\": {\"problem\": 1}}");
    assertThat(Schemas.validate(plan, "/problem", "problem"))
        .extracting(Violation::toString)
        .containsExactly(
            "plan.json:2 /problem/minutes: The property (minutes) is missing.",
            "plan.json:2 /problem/targets: The property (targets) is missing.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "muscles",
        "equipment",
        "limitations",
        "traits",
        "exercises",
        "problem",
        "week",
        "week-plan",
        "block-plan",
        "swap",
        "journal",
        "comparison"
      })
  void schemasAreThemselvesValidAndClosed(String name) {
    JsonDocument schema = JsonDocument.parse(name, Schemas.text(name));
    SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    assertThat(
            registry.getSchema(SchemaLocation.of(DialectId.DRAFT_2020_12)).validate(schema.tree()))
        .isEmpty();
    assertThat(schema.tree().get("title").asText()).isNotEmpty();
    schema
        .tree()
        .findParents("properties")
        .forEach(
            object ->
                assertThat(object.has("additionalProperties")).as(object.toString()).isTrue());
  }

  /** A session of a week has what a problem has, and says so in the same words. */
  @Test
  void aWeekHasTheFieldsOfAProblem() {
    JsonNode problem = JsonDocument.parse("problem", Schemas.text("problem")).tree();
    JsonNode week = JsonDocument.parse("week", Schemas.text("week")).tree();
    assertThat(week.at("/$defs/problem/properties")).isEqualTo(problem.get("properties"));
    problem
        .get("$defs")
        .properties()
        .forEach(def -> assertThat(week.get("$defs").get(def.getKey())).isEqualTo(def.getValue()));
    for (String part : List.of("session", "shared")) {
      JsonNode fields = week.at("/$defs/" + part + "/properties");
      problem
          .get("properties")
          .fieldNames()
          .forEachRemaining(
              name ->
                  assertThat(fields.at("/" + name + "/$ref").textValue())
                      .isEqualTo("#/$defs/problem/properties/" + name));
    }
  }

  @Test
  void namesListEverySchema() {
    assertThat(Schemas.names())
        .containsExactly(
            "muscles",
            "equipment",
            "limitations",
            "traits",
            "patterns",
            "regions",
            "exercises",
            "figures",
            "problem",
            "plan",
            "week",
            "week-plan",
            "block-plan",
            "swap",
            "journal",
            "comparison");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Schemas.text("problems"))
        .withMessage("The schema (problems) is not known. Maybe \"problem\"?");
  }

  private static List<String> problem(String text) {
    return Schemas.validate(JsonDocument.parse("p.json", text), "problem").stream()
        .map(Violation::toString)
        .toList();
  }
}
