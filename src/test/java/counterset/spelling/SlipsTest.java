package counterset.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipsTest {

  /** Held against the definition, tried out in all ways on all words of up to four letters. */
  @Test
  void areTheFewestThatLeadFromOneWordToTheOther() {
    List<String> words = words(4);
    for (String one : words) {
      for (String other : words) {
        assertThat(Slips.between(one, other))
            .as("%s, %s", one, other)
            .isEqualTo(fewest(one, other));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "3, 3, 0",
    "3, 12, 0",
    "4, 4, 1",
    "4, 7, 1",
    "7, 7, 1",
    "4, 8, 2",
    "8, 8, 2",
    "11, 11, 2",
    "11, 12, 3",
    "12, 12, 3",
    "40, 40, 3"
  })
  void longerWordsMayHaveMore(int one, int other, int allowed) {
    assertThat(Slips.allowed("a".repeat(one), "b".repeat(other))).isEqualTo(allowed);
    assertThat(Slips.allowed("a".repeat(other), "b".repeat(one))).isEqualTo(allowed);
  }

  /**
   * The optimal string alignment distance: letters are added, dropped, changed, or swapped with
   * their neighbour, and none is touched twice.
   */
  private static int fewest(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String restA = a.substring(1);
    String restB = b.substring(1);
    int best = fewest(restA, restB) + (a.charAt(0) == b.charAt(0) ? 0 : 1);
    best = Math.min(best, 1 + Math.min(fewest(restA, b), fewest(a, restB)));
    if (a.length() > 1
        && b.length() > 1
        && a.charAt(0) == b.charAt(1)
        && a.charAt(1) == b.charAt(0)) {
      best = Math.min(best, 1 + fewest(a.substring(2), b.substring(2)));
    }
    return best;
  }

  /** All words of the letters a, b and c, the empty one included. */
  private static List<String> words(int longest) {
    List<String> words = new ArrayList<>(List.of(""));
    for (int i = 0; i < words.size(); i++) {
      for (char letter : "abc".toCharArray()) {
        if (words.get(i).length() < longest) {
          words.add(words.get(i) + letter);
        }
      }
    }
    return words;
  }
}
