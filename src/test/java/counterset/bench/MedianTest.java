package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class MedianTest {

  @Test
  void isTheMiddleValueAndTheHigherOfTwo() {
    assertThat(Median.of(List.of(3.0, 1.0, 2.0))).isEqualTo(2);
    assertThat(Median.of(List.of(4.0, 1.0, 2.0, 3.0))).isEqualTo(3);
    assertThat(Median.of(List.of(1.0, Double.POSITIVE_INFINITY, 2.0))).isEqualTo(2);
  }

  @Test
  void noValuesHaveNone() {
    assertThatIllegalArgumentException().isThrownBy(() -> Median.of(List.of()));
  }
}
