package counterset.bound;

/**
 * Looks for multipliers with a low limit: deflected subgradient steps (Camerini, Fratta and
 * Maffioli 1975, from memory), a counted number of them.
 */
final class Descent {

  private static final double DEFLECTION = 1.5;
  private static final double FIRST_STEP = 1.0;
  private static final double SHORTER = 0.7;
  private static final int PATIENCE = 5;

  /** The steps before a path first remembers a wish, and those between one wish and the next. */
  private static final int ALONE = 40;

  private static final int TOGETHER = 15;
  private static final double AGAIN = 0.6;

  /** Keeps sums of prices within an {@code int}. */
  static final double LARGEST = 400;

  private final Relaxation relaxation;
  private final int scale;
  private final double[] best;
  private long limit = Long.MAX_VALUE;

  Descent(Relaxation relaxation, int scale) {
    this.relaxation = relaxation;
    this.scale = scale;
    this.best = new double[relaxation.size()];
  }

  /**
   * Goes so many steps.
   *
   * @param target scaled points that no limit can be below
   * @return the lowest limit seen, in scaled points
   */
  long run(int steps, long target) {
    double[] now = best.clone();
    double[] slope = new double[now.length];
    double[] direction = new double[now.length];
    double length = FIRST_STEP;
    int patience = PATIENCE;
    for (int step = 0; step < steps && limit >= target + scale; step++) {
      if (step >= ALONE && (step - ALONE) % TOGETHER == 0) {
        relaxation.project(best);
        relaxation.refine(best, target + scale);
        length = Math.max(length, AGAIN);
      }
      relaxation.project(now);
      long here = relaxation.limit(now, slope);
      if (here < limit) {
        limit = here;
        System.arraycopy(now, 0, best, 0, now.length);
        patience = PATIENCE;
      } else if (--patience == 0) {
        length *= SHORTER;
        patience = PATIENCE;
      }
      deflect(direction, slope);
      double square = dot(direction, direction);
      if (square == 0) {
        break;
      }
      double stride = length * ((double) (here - target) / scale) / square;
      for (int i = 0; i < now.length; i++) {
        now[i] = Math.max(-LARGEST, Math.min(LARGEST, now[i] - stride * direction[i]));
      }
    }
    return limit;
  }

  /** Turns the direction so that it does not undo the last step. */
  private static void deflect(double[] direction, double[] slope) {
    double square = dot(direction, direction);
    double against = dot(direction, slope);
    double keep = square > 0 && against < 0 ? -DEFLECTION * against / square : 0;
    for (int i = 0; i < slope.length; i++) {
      direction[i] = slope[i] + keep * direction[i];
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
