package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Bound;
import counterset.model.PlanScore;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0  | 0  | 28  | 40 | At most 12 points more are possible (limit +40): at most 43 % better.
          0  | 0  | 28  | 29 | At most 1 point more is possible (limit +29): at most 4 % better.
          0  | 0  | -5  | 0  | At most 5 points more are possible (limit 0).
          0  | 0  | 5   | 11 | At most 6 points more are possible (limit +11).
          0  | 0  | 28  | 28 | No better plan exists: proved.
          0  | -2 | -9  | -9 | No better plan exists among sessions that leave no more of the wishes unmet: proved.
          0  | -2 | -9  | 3  | At most 12 points more are possible among sessions that leave no more of the wishes unmet (limit +3).
          -1 | 0  | 28  | 40 | No limit applies: this session breaks rules.
          """)
  void saysHowMuchBetterAnyPlanCouldBe(int hard, int medium, int soft, int limit, String words) {
    PlanScore score = new PlanScore(hard, medium, soft, List.of());
    assertThat(BoundWords.of(new Bound(limit), score)).isEqualTo(words);
  }
}
