package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cases from the rule itself (Baechle and Earle, in the NSCA's Essentials; seen in secondary
 * sources): two or more over the goal in the last set of two consecutive sessions.
 */
class TwoForTwoTest {

  @ParameterizedTest
  @CsvSource({
    "10 10, true",
    "10 9, false",
    "9 9, false",
    "9 10, false",
    "10 8 10, false",
    "8 10 10, true",
    "11 10, true",
    "10, false",
    "'', false",
  })
  void goalOfEight(String lastSets, boolean up) {
    List<Integer> reps =
        Stream.of(lastSets.split(" ")).filter(s -> !s.isEmpty()).map(Integer::valueOf).toList();
    assertThat(TwoForTwo.isMet(8, reps)).isEqualTo(up);
  }
}
