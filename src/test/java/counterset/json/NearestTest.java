package counterset.json;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Slips;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a word may be from the one it is taken for: a third of its letters, one at least. */
class NearestTest {

  private static final List<String> KNOWN = List.of("row", "plank", "lunges", "deadlifts");

  @ParameterizedTest
  @CsvSource({
    // Up to five letters: one slip.
    "rox, row",
    "rxx,",
    "ro, row",
    "rowx, row",
    "rowxx,",
    "plxnk, plank",
    "plxxk,",
    // Six to eight: two.
    "lunxxs, lunges",
    "lxxxes,",
    "plankxx, plank",
    "plankxxx,",
    // Nine and more: three.
    "deadlixxx, deadlifts",
    "deadlxxxx,",
    // What was typed counts, not what was meant.
    "dadlft,",
    "dadlfts, deadlifts",
  })
  void aThirdOfTheLettersMayBeWrong(String typed, String expected) {
    assertThat(Nearest.to(typed, KNOWN).orElse(null)).isEqualTo(expected);
  }

  @Test
  void aPartOfAWordDoesFromThreeLettersOn() {
    List<String> known = List.of("goblet-squat", "split-squat", "squat-jump", "jump-squat");
    assertThat(Nearest.to("squat", known))
        .as("the shortest, then the alphabet")
        .hasValue("jump-squat");
    assertThat(Nearest.to("qua", known)).hasValue("jump-squat");
    assertThat(Nearest.to("qu", known)).isEmpty();
    assertThat(Nearest.to("GOBLET", known)).hasValue("goblet-squat");
  }

  @Test
  void aSlipGoesBeforeAPart() {
    assertThat(Nearest.to("curl", List.of("leg-curl", "burl"))).hasValue("burl");
  }

  @Test
  void theFewestSlipsGoFirst() {
    assertThat(Nearest.to("lunges", List.of("lungxx", "lunger"))).hasValue("lunger");
  }

  @Test
  void longTextsAreNotCompared() {
    String longest = "x".repeat(80);
    assertThat(Nearest.to(longest, List.of(longest))).hasValue(longest);
    assertThat(Nearest.to(longest + "x", List.of(longest + "x"))).isEmpty();
  }

  @Test
  void maybeIsSaidBehindASentence() {
    assertThat(Nearest.maybe("plnak", KNOWN)).isEqualTo(" Maybe \"plank\"?");
    assertThat(Nearest.maybe("xylophone", KNOWN)).isEmpty();
  }

  @Test
  void theDistanceIsTheFewestSlips() {
    List<String> words = Slips.words(4);
    for (String one : words) {
      for (String other : words) {
        assertThat(Nearest.distance(one, other))
            .as("%s, %s", one, other)
            .isEqualTo(Slips.fewest(one, other));
      }
    }
  }
}
