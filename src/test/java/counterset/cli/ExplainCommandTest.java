package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.model.Plan;
import counterset.report.Golden;
import counterset.report.Plans;
import counterset.report.json.PlanJson;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code explain}. */
class ExplainCommandTest {

  @TempDir Path folder;

  private Cli explain(Plan plan, String... options) {
    Cli.write(folder, "plan.json", PlanJson.text(plan, Plans.CATALOGUE));
    String[] args = new String[options.length + 2];
    args[0] = "explain";
    args[1] = "plan.json";
    System.arraycopy(options, 0, args, 2, options.length);
    return Cli.fixed(folder, args);
  }

  @Test
  void readsAsAgreed() {
    Map<String, String> texts = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> texts.put(name, explain(plan).speaksPlainly().out()));
    Golden.check("explain", ".txt", texts);
    assertThat(texts.values())
        .allSatisfy(text -> assertThat(text.lines()).allMatch(line -> line.length() <= 100));
  }

  @Test
  void aFeasiblePlanEndsWell() {
    Cli explained = explain(Plans.legs()).succeeds();

    assertThat(explained.out())
        .contains(
            "ALTOGETHER  all rules kept, all wishes met, ", "Instead of Goblet squat:", "possible");
  }

  @Test
  void aBrokenPlanIsExplainedToo() {
    Cli explained = explain(Plans.broken()).speaksPlainly();

    assertThat(explained.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(explained.out()).contains("(hard)", "No limit applies: this session breaks rules.");
  }

  @Test
  void theJsonAddsUpToo() {
    JsonNode json = explain(Plans.legs(), "--format", "json").succeeds().json().tree();
    int soft = 0;
    for (JsonNode section : json.at("/sections")) {
      for (JsonNode line : section.at("/lines")) {
        soft += line.at("/level").textValue().equals("soft") ? line.at("/points").intValue() : 0;
      }
    }

    assertThat(soft).isEqualTo(json.at("/score/soft").intValue());
    assertThat(json.at("/places")).isNotEmpty();
    for (JsonNode place : json.at("/places")) {
      assertThat(place.at("/runnersUp").size()).isLessThanOrEqualTo(3);
      for (JsonNode other : place.at("/runnersUp")) {
        int change = 0;
        for (JsonNode difference : other.at("/differences")) {
          change +=
              difference.at("/level").textValue().equals("soft")
                  ? difference.at("/points").intValue()
                  : 0;
        }
        assertThat(change).isEqualTo(other.at("/change/soft").intValue());
      }
    }
  }

  @Test
  void aLimitationTellsWhatItKeepsOutAndWhatItRestsOn() {
    Cli plan =
        Cli.fixed(folder, "plan", Cli.ASK, "--effort", "quick", "--write", "knees.json").succeeds();
    assertThat(plan.out()).isNotEmpty();
    Cli explained = Cli.fixed(folder, "explain", "knees.json").succeeds();

    assertThat(explained.out())
        .contains("Sore knees: ", "squat goes against sore knees (knee demand", "This rests on: ");
  }

  @Test
  void constraintsNeedNoPlan() {
    Cli list = Cli.fixed(folder, "explain", "--constraints").succeeds();

    assertThat(list.out()).contains("SESSION, HARD", "pairWorth", "-1 0 for the best pairs");
    assertThat(
            Cli.fixed(folder, "explain", "--constraints", "--format=json").succeeds().json().tree())
        .isNotEmpty();
  }

  @Test
  void whatCannotBeExplainedIsRefused() {
    assertThat(Cli.fixed(folder, "explain").isRefused(1).faults().get(0))
        .contains("PLAN is missing");
    assertThat(Cli.fixed(folder, "explain", "p.json", "--constraints").isRefused(1).faults().get(0))
        .contains("is about no plan");
    Cli.fixed(folder, "explain", "missing.json").isRefused(1);
    Cli.write(folder, "no.json", "{\"plan\": 1}");
    assertThat(Cli.fixed(folder, "explain", "no.json").status()).isEqualTo(Exit.BAD_INPUT);
  }
}
