package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Json;
import counterset.json.Schemas;
import counterset.report.ClassPlans;
import counterset.report.Golden;
import counterset.report.Plans;
import counterset.report.json.PlanJson;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of replacements, in full. */
class SwapGoldenTest {

  @TempDir Path folder;

  private Cli swap(String... options) {
    Cli.write(folder, "good.json", Json.pretty(GoodPlan.whole()));
    Cli.write(folder, "class.json", PlanJson.text(ClassPlans.good(), Plans.CATALOGUE));
    String[] args = new String[options.length + 1];
    args[0] = "swap";
    System.arraycopy(options, 0, args, 1, options.length);
    return Cli.fixed(folder, args).succeeds();
  }

  @Test
  void lists() {
    Golden.check(
        "swap",
        ".txt",
        Map.of(
            "in-a-pair", swap("good.json", "--at", "3B").out(),
            "one-sided", swap("good.json", "--at", "2A").out(),
            "in-a-class", swap("class.json", "--at", "1A").out()));
  }

  @ParameterizedTest
  @CsvSource({"good.json, 3B", "good.json, 2A", "class.json, 1A"})
  void jsonFitsTheSchemaAndTellsTheSame(String file, String at) {
    Cli json = swap(file, "--at", at, "--format", "json");
    assertThat(Schemas.validate(json.json(), "swap")).isEmpty();
    String text = swap(file, "--at", at).out();
    json.json()
        .at("/replacements")
        .forEach(
            replacement -> {
              assertThat(text).contains(replacement.get("name").textValue());
              for (String level : new String[] {"hard", "medium", "soft"}) {
                int sum = 0;
                for (var difference : replacement.get("differences")) {
                  boolean counts = difference.get("level").textValue().equals(level);
                  sum += counts ? difference.get("points").intValue() : 0;
                }
                assertThat(sum).isEqualTo(replacement.at("/change/" + level).intValue());
              }
            });
    assertThat(json.json().at("/replacements")).isNotEmpty();
  }

  @Test
  void allIsAll() {
    Cli json = swap("good.json", "--at", "3B", "--all", "--format", "json");
    assertThat(json.json().at("/replacements"))
        .hasSize(json.json().at("/replacementsInAll").intValue())
        .hasSizeGreaterThan(10);
    assertThat(json.json().at("/breaking")).hasSize(json.json().at("/breakingInAll").intValue());
  }
}
