package counterset.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.report.Golden;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import counterset.report.Times;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunSheetTest {

  @Test
  void looksAsAgreed() {
    Map<String, String> sheets = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> sheets.put(name, sheet(plan)));
    Golden.check("runsheet", ".txt", sheets);
  }

  @TestFactory
  Stream<DynamicTest> anySessionGivesASheetThatFitsThePage() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(150)
        .map(
            seed ->
                DynamicTest.dynamicTest("seed " + seed, () -> fitsThePage(RandomPlans.of(seed))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"legs", "upper-rounds", "broken", "class"})
  void namesEveryExerciseAndEveryTime(String name) {
    Plan plan = Plans.all().get(name);
    fitsThePage(plan);
    String text = sheet(plan);
    plan.session()
        .work()
        .map(Exercise::name)
        .forEach(exercise -> assertThat(text).contains(exercise));
    plan.timeline()
        .forEach(interval -> assertThat(text).contains(Times.clock(interval.start()) + "  "));
    plan.cautions().forEach(caution -> assertThat(text.replaceAll("\\s+", " ")).contains(caution));
  }

  private static void fitsThePage(Plan plan) {
    String text = sheet(plan);
    assertThat(text).endsWith("\n").doesNotContain("\u001b", "\r", "\t", "null", "Optional");
    assertThat(text.lines())
        .allMatch(line -> line.length() <= 100 && line.equals(line.stripTrailing()));
    assertThat(text.codePoints()).allMatch(c -> c == '\n' || c >= ' ' && c < 127);
  }

  @Test
  void colourIsOnlyAnExtra() {
    Plan plan = Plans.legs();
    String coloured = RunSheet.of(plan, Plans.CATALOGUE, true, Detail.FULL);
    assertThat(coloured).contains("\u001b[1m");
    assertThat(coloured.replaceAll("\u001b\\[[0-9]m", "")).isEqualTo(sheet(plan));
  }

  /** Half as long, and still all that one needs to lead it. */
  @ParameterizedTest
  @ValueSource(strings = {"legs", "upper-rounds", "broken", "class"})
  void inBriefNamesEveryExerciseItsSetUpAndItsFirstCue(String name) {
    Plan plan = Plans.all().get(name);
    String text = RunSheet.of(plan, Plans.CATALOGUE, false, Detail.BRIEF);
    String flat = text.replaceAll("\\s+", " ");
    plan.session()
        .supersets()
        .forEach(
            superset ->
                assertThat(superset.exercises())
                    .allSatisfy(
                        exercise ->
                            assertThat(flat)
                                .contains(exercise.name(), exercise.setup())
                                .contains(exercise.cues().get(0))));
    plan.cautions().forEach(caution -> assertThat(flat).contains(caution));
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text.length()).isLessThan(sheet(plan).length() * 9 / 10);
    assertThat(flat).doesNotContain(" Watch ", " Say Rest");
  }

  @Test
  void aBrokenPlanIsHeadedByAWarning() {
    List<String> lines = sheet(Plans.broken()).lines().toList();
    assertThat(lines.get(1)).startsWith("DO NOT LEAD THIS AS IT IS");
    assertThat(lines).contains("Interrupted: the best plan found so far.", "NOT MET:");
    assertThat(sheet(Plans.legs())).doesNotContain("DO NOT LEAD", "Interrupted", "NOT MET");
  }

  @Test
  void onOneLine() {
    assertThat(SessionLine.of(Plans.legs()))
        .matches(
            "19:55 of 20:00, 8 supersets, 6 of 6 targets, all rules kept, all wishes met,"
                + " [-+]?[0-9]+ points?: Lunch-break legs");
    assertThat(SessionLine.of(Plans.broken()))
        .contains("NOT FEASIBLE, rules broken, by ")
        .endsWith(", interrupted: Too much");
  }

  private static String sheet(Plan plan) {
    return RunSheet.of(plan, Plans.CATALOGUE, false, Detail.FULL);
  }
}
