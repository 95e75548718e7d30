package counterset.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

  private static final List<String> KNOWN =
      List.of("minutes", "hamstrings", "goblet-squat", "split-squat", "hips", "lips");

  @Test
  void theFewestSlipsFirst() {
    assertThat(Nearest.to("minuets", KNOWN)).hasValue("minutes");
    assertThat(Nearest.to("HAMSTRINGS", KNOWN)).hasValue("hamstrings");
    assertThat(Nearest.to("dips", KNOWN)).as("ties go by the alphabet").hasValue("hips");
    assertThat(Nearest.all("dips", KNOWN)).containsExactly("hips", "lips");
    assertThat(Nearest.maybe("splitsquat", KNOWN)).isEqualTo(" Maybe \"split-squat\"?");
  }

  @Test
  void elseTheShortestThatContainsTheWord() {
    assertThat(Nearest.to("squat", KNOWN)).hasValue("split-squat");
    assertThat(Nearest.all("squat", KNOWN)).isEmpty();
  }

  @Test
  void aPartOfAWordDoesFromThreeLettersOn() {
    List<String> known = List.of("squat-jump", "goblet-squat", "jump-squat");
    assertThat(Nearest.to("squat", known)).as("ties go by the alphabet").hasValue("jump-squat");
    assertThat(Nearest.to("QUA", known)).hasValue("jump-squat");
    assertThat(Nearest.to("qu", known)).isEmpty();
    assertThat(Nearest.to("curl", List.of("leg-curl", "burl"))).as("a slip").hasValue("burl");
  }

  @Test
  void longTextsAreNotCompared() {
    String longest = "x".repeat(80);
    assertThat(Nearest.to(longest, List.of(longest))).hasValue(longest);
    assertThat(Nearest.to(longest + "x", List.of(longest + "x"))).isEmpty();
  }

  @Test
  void nothingIsBetterThanAGuess() {
    assertThat(Nearest.to("zzzz", KNOWN)).isEmpty();
    assertThat(Nearest.to("", KNOWN)).isEmpty();
    assertThat(Nearest.to("x".repeat(1_000_000), KNOWN)).isEmpty();
    assertThat(Nearest.maybe("zzzz", KNOWN)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "abcd, acbd, 1",
    "'', abc, 3",
    "größe, größe, 0",
    "größen, größe, 1",
    "kitten, sitting, 3",
    "ca, abc, 3"
  })
  void slipsAreCounted(String a, String b, int slips) {
    assertThat(Slips.between(a, b)).isEqualTo(slips);
    assertThat(Slips.between(b, a)).isEqualTo(slips);
  }

  @ParameterizedTest
  @CsvSource({
    "row, bow, false",
    "rows, bows, true",
    "lunges, lnuge, false",
    "abcdefg, abcdefx, true",
    "abcdefg, abcdexx, false",
    "abcdefgh, abcdefxx, true",
    "abcdefgh, abcdexxx, false",
    "abcdefghijkl, abcdefghixxx, true",
    "abcdefghijkl, abcdefghxxxx, false"
  })
  void longerWordsMayHaveMore(String a, String b, boolean only) {
    assertThat(Slips.only(a, b)).isEqualTo(only);
  }
}
