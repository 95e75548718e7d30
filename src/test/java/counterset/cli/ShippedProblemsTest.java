package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.catalogue.Catalogues;
import counterset.explain.Unmet;
import counterset.intake.Readers;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.report.json.PlanJson;
import counterset.report.text.Detail;
import counterset.report.text.RunSheet;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every problem that comes with the project is solved so that a coach can lead the plan. */
class ShippedProblemsTest {

  private static final int WIDEST = 100;

  @TempDir Path folder;

  static List<Path> problems() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("problems"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("problems")
  void isSolved(Path file) {
    Problem problem = Readers.problems(Catalogues.embedded()).read(file);
    Plan plan = plan(problem);
    SoftAssertions softly = new SoftAssertions();
    softly
        .assertThat(plan.score().hard())
        .as("hard: %s", Unmet.rules(plan, Catalogues.embedded()))
        .isZero();
    softly
        .assertThat(plan.score().medium())
        .as("medium: %s", Unmet.wishes(plan, Catalogues.embedded()))
        .isZero();
    clockIsWhole(plan, softly);
    softly
        .assertThat(RunSheet.of(plan, Catalogues.embedded(), false, Detail.FULL).lines())
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(WIDEST));
    fileIsValid(PlanJson.text(plan, Catalogues.embedded()), softly);
    softly.assertAll();
  }

  /** With standard effort only where less is not enough: the test asks for no points. */
  private static Plan plan(Problem problem) {
    SessionPlanner planner = new SessionPlanner(Catalogues.embedded(), "test");
    Plan plan = planner.plan(problem, Limit.of(Effort.QUICK));
    return plan.score().medium() == 0 && plan.score().hard() == 0
        ? plan
        : planner.plan(problem, Limit.of(Effort.STANDARD));
  }

  private static void clockIsWhole(Plan plan, SoftAssertions softly) {
    int end = 0;
    for (Interval interval : plan.timeline()) {
      softly.assertThat(interval.start()).as("start of %s", interval).isEqualTo(end);
      softly.assertThat(interval.end()).as("end of %s", interval).isGreaterThan(end);
      end = interval.end();
    }
    int cap = 60 * plan.problem().minutes();
    softly.assertThat(end).isEqualTo(plan.totals().seconds()).isLessThanOrEqualTo(cap);
    softly.assertThat(cap - end).as("unused").isEqualTo(plan.totals().unusedSeconds());
  }

  private void fileIsValid(String text, SoftAssertions softly) {
    JsonDocument document = JsonDocument.parse("plan", text);
    softly.assertThat(Schemas.validate(document, "plan")).isEmpty();
    for (JsonNode exercise : document.tree().findValues("exercise")) {
      softly.assertThat(Catalogues.embedded().exercises()).containsKey(exercise.textValue());
    }
    Cli.write(folder, "plan.json", text);
    Cli check = Cli.run(folder, "check", "plan.json");
    softly.assertThat(check.status()).as(check.toString()).isEqualTo(Exit.DONE);
  }
}
