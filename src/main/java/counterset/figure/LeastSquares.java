package counterset.figure;

import java.util.function.UnaryOperator;

/**
 * Least squares by the method of Levenberg and Marquardt, with differences for derivatives. For a
 * few dozen unknowns.
 */
final class LeastSquares {

  private static final int STEPS = 40;
  private static final double DIFFERENCE = 1e-5;
  private static final double GOOD_ENOUGH = 1e-7;

  private LeastSquares() {}

  /**
   * Where the sum of the squares is least, seen from a start.
   *
   * @param residuals of as many numbers each time
   */
  static double[] solve(double[] start, UnaryOperator<double[]> residuals) {
    double[] at = start.clone();
    double[] here = residuals.apply(at);
    double cost = square(here);
    double damping = 1e-3;
    for (int step = 0; step < STEPS; step++) {
      double[][] slopes = slopes(at, here, residuals);
      double gained = 0;
      while (damping < 1e6) {
        double[] next = step(at, here, slopes, damping);
        double[] there = residuals.apply(next);
        double less = cost - square(there);
        if (less >= 0) {
          at = next;
          here = there;
          cost -= less;
          gained = less;
          damping = StrictMath.max(1e-9, damping / 5);
          break;
        }
        damping *= 4;
      }
      if (gained < GOOD_ENOUGH * (1 + cost)) {
        break;
      }
    }
    return at;
  }

  private static double[][] slopes(double[] at, double[] here, UnaryOperator<double[]> residuals) {
    double[][] slopes = new double[at.length][];
    for (int i = 0; i < at.length; i++) {
      double[] moved = at.clone();
      moved[i] += DIFFERENCE;
      double[] there = residuals.apply(moved);
      for (int j = 0; j < there.length; j++) {
        there[j] = (there[j] - here[j]) / DIFFERENCE;
      }
      slopes[i] = there;
    }
    return slopes;
  }

  private static double[] step(double[] at, double[] here, double[][] slopes, double damping) {
    int n = at.length;
    double[][] normal = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        normal[i][j] = dot(slopes[i], slopes[j]);
      }
      normal[i][i] *= 1 + damping;
      normal[i][n] = -dot(slopes[i], here);
    }
    double[] next = eliminate(normal);
    for (int i = 0; i < n; i++) {
      next[i] += at[i];
    }
    return next;
  }

  /** Solves a positive definite system whose last column is the right-hand side. */
  private static double[] eliminate(double[][] rows) {
    int n = rows.length;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        double factor = rows[j][i] / rows[i][i];
        for (int k = i; k <= n; k++) {
          rows[j][k] -= factor * rows[i][k];
        }
      }
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      double sum = rows[i][n];
      for (int k = i + 1; k < n; k++) {
        sum -= rows[i][k] * x[k];
      }
      x[i] = sum / rows[i][i];
    }
    return x;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double square(double[] a) {
    return dot(a, a);
  }
}
