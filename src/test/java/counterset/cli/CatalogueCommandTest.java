package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.catalogue.Catalogues;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueCommandTest {

  @TempDir Path folder;

  private Cli catalogue(String... args) {
    List<String> all = new ArrayList<>(List.of("catalogue"));
    all.addAll(List.of(args));
    return Cli.run(folder, all.toArray(String[]::new));
  }

  private List<JsonNode> list(String... filters) {
    List<String> args = new ArrayList<>(List.of("list", "--format", "json"));
    args.addAll(List.of(filters));
    List<JsonNode> exercises = new ArrayList<>();
    catalogue(args.toArray(String[]::new)).succeeds().json().tree().forEach(exercises::add);
    return exercises;
  }

  @Test
  void listsEveryExerciseALine() {
    Cli list = catalogue("list").succeeds();
    int count = Catalogues.embedded().exercises().size();
    assertThat(list.out().lines())
        .hasSize(count)
        .allMatch(line -> line.equals(line.stripTrailing()));
    assertThat(list.err()).isEqualTo(count + " exercises\n");
    assertThat(list()).hasSize(count);
  }

  @Test
  void everyFilterNarrowsTheList() {
    List<JsonNode> left =
        list(
            "--part",
            "main",
            "--region",
            "lower",
            "--muscle",
            "hamstrings",
            "--equipment",
            "dumbbell",
            "--limitation",
            "sore-knees",
            "--limitation",
            "sore-shoulders",
            "--pattern",
            "hinge",
            "--level",
            "2",
            "romanian");
    assertThat(left)
        .isNotEmpty()
        .allSatisfy(
            exercise -> {
              assertThat(exercise.at("/part").textValue()).isEqualTo("main");
              assertThat(exercise.at("/pattern").textValue()).isEqualTo("hinge");
              assertThat(exercise.at("/primary").toString()).contains("\"hamstrings\"");
              assertThat(exercise.at("/needs").toString()).contains("\"dumbbell\"");
              assertThat(exercise.at("/name").textValue() + exercise.at("/names"))
                  .containsIgnoringCase("romanian");
              assertThat(exercise.at("/level").intValue()).isLessThanOrEqualTo(2);
            });
  }

  @Test
  void noneIsWhatNeedsNothingButWhatIsAlwaysThere() {
    assertThat(list("--equipment", "none"))
        .isNotEmpty()
        .allSatisfy(
            exercise ->
                assertThat(exercise.at("/needs").findValuesAsText("equipment"))
                    .allMatch("wall"::equals));
  }

  @Test
  void anEmptyListIsNoFault() {
    Cli list = catalogue("list", "zzz").succeeds();
    assertThat(list.out()).isEmpty();
    assertThat(list.err()).isEqualTo("0 exercises\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--muscle quadricep      | Maybe \"quadriceps\"?",
        "--equipment dumbel      | Maybe \"dumbbell\"?",
        "--limitation sore-knee  | Maybe \"sore-knees\"?",
        "--pattern squt          | Maybe \"squat\"?",
        "--region lowr           | --region (lowr) must be one of upper, lower, core.",
        "--part mian             | --part (mian) must be one of main, warm-up, cool-down.",
        "--level 4               | --level (4) must be 1, 2 or 3.",
        "--level two             | two",
      })
  void unknownFiltersAreRefused(String filter, String says) {
    String[] words = filter.split(" ");
    assertThat(catalogue("list", words[0], words[1]).isRefused(1).err()).contains(says);
  }

  @Test
  void showsOneExercise() {
    Cli show = catalogue("show", "goblet-squat").succeeds();
    assertThat(show.out())
        .startsWith("Goblet squat\n")
        .contains("\ntrains            quadriceps\n", "\nneeds             1 dumbbell (heavy)\n")
        .contains("\nnot for           Sore knees");
    Cli json = catalogue("show", "goblet-squat", "--format", "json").succeeds();
    assertThat(json.json().at("/id").textValue()).isEqualTo("goblet-squat");
    assertThat(json.json().at("/demand/knee").intValue()).isEqualTo(2);
  }

  @Test
  void anUnknownExerciseIsRefusedWithTheNearestOne() {
    assertThat(catalogue("show", "goblet-sqat").isRefused(1).err())
        .isEqualTo("There is no exercise (goblet-sqat). Maybe \"goblet-squat\"?\n");
  }

  @Test
  void gapsAsTextAndAsJson() {
    Cli text = catalogue("gaps").succeeds();
    assertThat(text.out()).startsWith("Nothing at all:\n").contains("\nFewer than ");
    Cli json = catalogue("gaps", "--format", "json").succeeds();
    assertThat(json.json().tree().isContainerNode()).isTrue();
    assertThat(json.out()).contains("\"quadriceps\"", "\"sore-knees\"");
  }

  @ParameterizedTest
  @CsvSource({"--help", "list --help", "show --help", "gaps --help"})
  void helpSaysHow(String words) {
    Cli help = catalogue(words.split(" ")).succeeds();
    assertThat(help.out()).contains("Usage: counterset catalogue");
    assertThat(help.out().lines()).allMatch(line -> line.length() <= 100);
  }
}
