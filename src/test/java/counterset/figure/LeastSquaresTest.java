package counterset.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Two problems of Moré, Garbow and Hillstrom (1981), "Testing Unconstrained Optimization Software".
 */
class LeastSquaresTest {

  @Test
  void findsTheBottomOfTheCurvedValleyOfRosenbrock() {
    double[] found =
        LeastSquares.solve(
            new double[] {-1.2, 1}, x -> new double[] {10 * (x[1] - x[0] * x[0]), 1 - x[0]});

    assertThat(found[0]).isCloseTo(1, within(1e-3));
    assertThat(found[1]).isCloseTo(1, within(1e-3));
  }

  @Test
  void findsOneOfTheTwoEndsOfFreudensteinAndRoth() {
    double[] found =
        LeastSquares.solve(
            new double[] {6, 5},
            x ->
                new double[] {
                  -13 + x[0] + ((5 - x[1]) * x[1] - 2) * x[1],
                  -29 + x[0] + ((x[1] + 1) * x[1] - 14) * x[1]
                });

    assertThat(found[0]).isCloseTo(5, within(1e-3));
    assertThat(found[1]).isCloseTo(4, within(1e-3));
  }
}
