package counterset.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is not understood is told with its place and the nearest names; nothing is passed over. */
class TypedFaultsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "squat / flying pig | 1:9 | \"flying pig\" is no exercise of the catalogue",
        "squat, tempo 3-1-1 | 1:8 | \"tempo\" is no exercise of the catalogue",
        "donkey kick with dumbbells | 1:1 | Donkey kick is not known with that equipment.",
        "reverse lunge 20 lb | 1:15 | Masses are in kilograms",
        "kickback | 1:1 | \"kickback\" may be any of ",
        "triceps extension | 1:1 | may be any of ",
        "curl | 1:1 | \"Dumbbell curl\", ",
        "squat @@@ | 1:7 | This is not understood here.",
        "march in place | 1:1 | belongs to the warm-up and not to the main part",
        "20 min, hamstirngs | 1:9 | Not understood; maybe \"hamstrings\"?",
        "squat / push-up / plank / crunch | 1:27 | A superset has at most three exercises, this one has 4.",
        "squat 45 s / push-up 40 s | 1:22 | Line 1 says 45 seconds of work, this line 40",
        "squat, rest 99999 | 1:8 | The seconds of rest are a whole number from 0 to 600",
      })
  void areToldWithTheirPlace(String text, String place, String message) {
    List<String> faults = Texts.faults(text);
    assertThat(faults).anySatisfy(f -> assertThat(f).startsWith(place + " ").contains(message));
  }

  @Test
  void allOfThemInOneRun() {
    String text =
        "20 min, lower body, dumbbells\n\ngoblet squat / flying pig\nrest 45\nrest 30\n"
            + "3A clam\n3B hip hinge\n4A crunch\n3A plank\nwarm-up: goblet squat";
    assertThat(Texts.faults(text))
        .extracting(fault -> fault.substring(0, fault.indexOf(':')))
        .containsExactly("3", "5", "9", "10");
  }

  @ParameterizedTest
  @CsvSource({"''", "'# only a remark'", "'rest 30'", "'20 min, lower body'", "'Warm-up:\nmarch'"})
  void withoutExercisesThereIsNoSession(String text) {
    assertThat(Texts.faults(text)).singleElement().asString().startsWith("0:0 No exercise");
  }

  @Test
  void roundsHaveToBeTheSameForAll() {
    assertThat(Texts.faults("squat / push-up x3\n\nplank / crunch x2"))
        .singleElement()
        .asString()
        .startsWith(
            "1:17 All supersets have the same number of rounds. Here it is 3, but"
                + " superset 2 has 2.");
    assertThat(Texts.faults("squat / push-up x3\nplank / crunch"))
        .singleElement()
        .asString()
        .contains("superset 2 says nothing of rounds");
  }

  @Test
  void columnsCountTheCharactersThatWereTyped() {
    assertThat(Texts.faults("squat 7\u00bd kg \u2013 x\u00a012 / \ud83d\ude00\ud83d\ude00 pig"))
        .anySatisfy(fault -> assertThat(fault).startsWith("1:25 \"pig\""));
  }

  /** Whatever is typed: a session or faults, never an exception. */
  @Test
  void anyTextIsRead() {
    String[] pieces = {
      "squat",
      "1A",
      "A1)",
      " / ",
      "\n",
      "\n\n",
      "x 12",
      "12",
      "rest",
      "30",
      "s",
      "(",
      ")",
      "[",
      "#",
      "-",
      "*",
      "\u2022",
      "each side",
      "left",
      "/",
      "kg",
      "8",
      "dumbbells",
      "with",
      ",",
      "warm-up",
      "cool-down:",
      "Superset 2",
      "\t",
      "\u0000",
      "\ud83d\ude00",
      "\ud83d",
      "\u202e",
      "45/15",
      "2 rounds",
      "20 min",
      "min",
      "lower body",
      "ankle weights on",
      "off",
      "w/",
      ":",
      "'",
      "\"",
      "&",
      "and",
      "+",
      "\u00bd",
      "3-1-1",
      "tri-sets",
      "title:",
      "for:",
      "0",
      "-5",
      "99999999999999",
      "1.5",
    };
    long seed = 20261125;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      int size = random.nextInt(25);
      for (int j = 0; j < size; j++) {
        text.append(pieces[random.nextInt(pieces.length)])
            .append(random.nextInt(3) == 0 ? "" : " ");
      }
      String what = "seed " + seed + ", text " + i + ": " + text;
      try {
        TypedReading reading = Texts.read(text.toString());
        assertThat(reading.session().isPresent()).as(what).isEqualTo(reading.faults().isEmpty());
      } catch (RuntimeException e) {
        throw new AssertionError(what, e);
      }
    }
  }
}
