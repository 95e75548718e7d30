package counterset.problem;

import static counterset.problem.Fixture.problem;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.model.Problem;
import org.junit.jupiter.api.Test;

class ProblemJsonTest {

  private static final String FULL =
      """
      {"problem":1,"title":"Legs","minutes":25,\
      "clock":{"getReady":5,"warmUp":100,"work":40,"switch":5,"rest":35,"coolDown":60,"perSuperset":2,"rounds":2},\
      "targets":[{"muscle":"quadriceps","emphasis":2,"minSets":0},{"muscle":"chest","emphasis":1,"minSets":3}],\
      "equipment":[{"id":"dumbbell","count":2,"kg":[6,7.5],"loads":["light","heavy"]},\
      {"id":"mat","count":1,"kg":[],"loads":["light","medium","heavy"]}],\
      "limitations":["sore-wrists"],"tracks":["sore-knees",["sore-knees","sore-wrists"]],"level":3,"pairing":"free",\
      "include":["push-up"],"exclude":["lunge"],"keep":[{"at":"2B","exercise":"goblet-squat"}],"likes":["squat"],\
      "dislikes":["push"],"recent":[{"date":"2026-03-02","exercises":["push-up"]}],"date":"2026-03-04",\
      "weights":{"floorTrip":0},"seed":7}""";

  @Test
  void writesEveryFieldInOrder() {
    assertThat(Json.line(ProblemJson.write(problem(FULL)))).isEqualTo(FULL);
  }

  @Test
  void writesEveryDefault() {
    Problem problem = problem("{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"]}");
    assertThat(Json.line(ProblemJson.write(problem)))
        .isEqualTo(
            """
            {"problem":1,"title":"Session","minutes":20,\
            "clock":{"getReady":10,"warmUp":150,"work":45,"switch":0,"rest":30,"coolDown":0,"perSuperset":2,"rounds":1},\
            "targets":[{"muscle":"quadriceps","emphasis":1,"minSets":1},\
            {"muscle":"hamstrings","emphasis":1,"minSets":1}],\
            "equipment":[],"limitations":[],"tracks":[],"level":2,"pairing":"opposing","include":[],"exclude":[],\
            "keep":[],"likes":[],"dislikes":[],"recent":[],"weights":{},"seed":1}""");
  }

  @Test
  void whatIsWrittenReadsBackEqualAndFitsTheSchema() {
    for (String text :
        new String[] {FULL, "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"whole\"]}"}) {
      Problem problem = problem(text);
      JsonDocument written = JsonDocument.of("memory", ProblemJson.write(problem));
      assertThat(Schemas.validate(written, "problem")).isEmpty();
      assertThat(Fixture.PROBLEMS.read(written, "")).isEqualTo(problem);
      assertThat(problem(Json.pretty(written.tree()))).isEqualTo(problem);
    }
  }
}
