package counterset.catalogue;

import static counterset.catalogue.SmallCatalogue.exercise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterset.json.InvalidInputException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntegrityTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        ", \"primary\": [\"quadricep\"]                                    | /primary/0 | Maybe \"quadriceps\"?",
        ", \"secondary\": [\"calves\"]                                     | /secondary/0 | The muscle (calves) is not known.",
        ", \"secondary\": [\"quadriceps\"]                                 | /secondary/0 | is primary as well",
        ", \"needs\": [{\"equipment\": \"dumbell\"}]                       | /needs/0/equipment | Maybe \"dumbbell\"?",
        ", \"needs\": [{\"equipment\": \"mat\", \"load\": \"heavy\"}]      | /needs/0/load | A load makes no sense for (mat)",
        ", \"needs\": [{\"equipment\": \"dumbbell\", \"count\": 3}]        | /needs/0/count | more than two hands",
        ", \"needs\": [{\"equipment\": \"wall\", \"count\": 2}]            | /needs/0/count | must be 1",
        ", \"needs\": [{\"equipment\": \"mat\"}, {\"equipment\": \"mat\"}] | /needs/1/equipment | is needed twice",
        ", \"allowsWorn\": [\"dumbbell\"]                                  | /allowsWorn/0 | is held, not worn",
        ", \"needs\": [{\"equipment\": \"ankle-weights\"}], \"allowsWorn\": [\"ankle-weights\"] | /allowsWorn/0 | leave it out",
        ", \"seconds\": 30                                                 | /seconds | must not have seconds",
        ", \"part\": \"warm-up\"                                           | /seconds | must have seconds",
        ", \"part\": \"cool-down\"                                         | /seconds | must have seconds",
        ", \"part\": \"warm-up\", \"seconds\": 30, \"sides\": \"unilateral\" | /sides | make it alternating",
        ", \"variantOf\": \"squad\"                                        | /variantOf | Maybe \"squat\"?",
        ", \"variantOf\": \"move\"                                         | /variantOf | a variant of itself",
        ", \"variantOf\": \"squat\", \"family\": \"bridge\"                | /variantOf | another family (squat, here bridge)",
        ", \"variantOf\": \"deep-squat\"                                   | /variantOf | name its base (squat) instead",
      })
  void anExercise(String more, String pointer, String message) {
    SmallCatalogue.in(folder)
        .with("exercises/b.json", "[" + exercise("deep-squat", ", \"variantOf\": \"squat\"") + "]")
        .with("exercises/c.json", "[" + exercise("move", more) + "]");
    assertThat(faults(() -> Catalogues.load(folder)))
        .singleElement()
        .asString()
        .contains("c.json:", " /0" + pointer + ": ", message);
  }

  @Test
  void muscles() {
    SmallCatalogue.in(folder)
        .with(
            "muscles.json",
            """
            [{"id": "quadriceps", "name": "A", "region": "lower", "aspect": "front", "opposes": ["hamstrings"]},
             {"id": "hamstrings", "name": "B", "region": "lower", "aspect": "back", "opposes": ["hamstrings"]},
             {"id": "core", "name": "C", "region": "core", "aspect": "back", "opposes": ["hamstring"]}]
            """);
    assertThat(faults(() -> Catalogues.load(folder)))
        .containsExactly(
            "muscles.json:1 /0/opposes/0: The muscle (hamstrings) does not oppose (quadriceps) in turn; name each in the"
                + " other.",
            "muscles.json:2 /1/opposes/0: The muscle (hamstrings) must not oppose itself.",
            "muscles.json:3 /2/id: The muscle (core) has the name of a region; give it another id.",
            "muscles.json:3 /2/opposes/0: The muscle (hamstring) is not known. Maybe \"hamstrings\"?");
  }

  @Test
  void idsAreUniqueAcrossFiles() {
    SmallCatalogue.in(folder).with("exercises/a.json", "[" + exercise("squat", "") + "]");
    assertThat(faults(() -> Catalogues.load(folder)))
        .singleElement()
        .asString()
        .contains(
            "squats.json:1 /0/id: The exercise (squat) is there already, in ",
            "a.json:1; give it another id.");
  }

  @Test
  void traitsMustBeListedWhereThereIsAList() {
    SmallCatalogue small = SmallCatalogue.in(folder);
    small.with("exercises/b.json", "[" + exercise("hop", ", \"traits\": [\"jmup\"]") + "]");
    assertThat(Catalogues.load(folder).exercises()).containsKey("hop");
    small.with("traits.json", "[{\"id\": \"jump\", \"meaning\": \"Leaves the floor.\"}]");
    assertThat(faults(() -> Catalogues.load(folder)))
        .singleElement()
        .asString()
        .contains("/0/traits/0: The trait (jmup) is not known. Maybe \"jump\"?");
  }

  @Test
  void fixedEquipmentTakesNoTime() {
    SmallCatalogue.in(folder)
        .with(
            "equipment.json",
            "[{\"id\": \"wall\", \"name\": \"Wall\", \"kind\": \"fixed\", \"putOnSeconds\": 1, \"takeOffSeconds\": 0}]");
    assertThat(faults(() -> Catalogues.load(folder)))
        .containsExactly(
            "equipment.json:1 /0/kind: Fixed equipment (wall) is always there; its seconds must be 0.");
  }

  @Test
  void faultsOfSchemaAndOfReferencesComeTogetherFileByFile() {
    SmallCatalogue.in(folder)
        .with(
            "exercises/a.json",
            "["
                + exercise("one", ", \"secondary\": [\"shin\"]")
                + ",\n"
                + exercise("two", ", \"x\": 1")
                + "]")
        .with(
            "exercises/b.json",
            "[" + exercise("three", ", \"variantOf\": \"two\", \"level\": 9") + "]");
    List<String> faults = faults(() -> Catalogues.load(folder));
    assertThat(faults).hasSize(3);
    assertThat(faults.get(0))
        .contains("a.json:4 /0/secondary/0: The muscle (shin) is not known. Maybe \"shins\"?");
    assertThat(faults.get(1)).contains("/1/x: The property (x) is not known here.");
    assertThat(faults.get(2)).contains("b.json:4 /0/level: The level (9) must be at most 3.");
  }

  @Test
  void unreadableFilesAreReportedWithoutFollowUps() {
    SmallCatalogue.in(folder)
        .without("equipment.json")
        .with("muscles.json", "[")
        .with("limitation.json", "[]");
    assertThat(faults(() -> Catalogues.load(folder)))
        .containsExactly(
            "limitation.json: The file is no part of a catalogue; exercises belong in the folder exercises. Maybe"
                + " \"limitations.json\"?",
            "muscles.json:1: This is not valid JSON at column 2: the text ends too early, a closing bracket or quote is"
                + " missing.",
            "equipment.json: There is no such file.");
  }

  private List<String> faults(Supplier<?> load) {
    InvalidInputException e = catchThrowableOfType(InvalidInputException.class, load::get);
    assertThat(e).isNotNull();
    return e.violations().stream()
        .map(fault -> fault.toString().replace(folder + "/", ""))
        .toList();
  }
}
