package counterset.planning.moves;

/**
 * How many points an annealing walk may lose in one try: at random, exponentially distributed about
 * a mean that falls from try to try by a constant factor (Kirkpatrick, Gelatt and Vecchi,
 * "Optimization by simulated annealing", Science 220 (1983) 671-680).
 *
 * <p>Only {@link StrictMath} and plain arithmetic, so that every machine walks alike.
 */
final class Temperature {

  private static final int LEVELS = 1 << 12;
  private static final int TRIES_PER_STEP = 64;
  private static final double[] LOSS = new double[LEVELS];

  static {
    for (int level = 0; level < LEVELS; level++) {
      LOSS[level] = -StrictMath.log((level + 0.5) / LEVELS);
    }
  }

  private final double factor;
  private double mean;
  private int tries;

  /**
   * A temperature.
   *
   * @param start the mean loss allowed at first, in points, above 0
   * @param end the mean loss allowed at last, above 0
   * @param tries how many there will be, at least 1
   */
  Temperature(double start, double end, int tries) {
    this.mean = start;
    this.factor = StrictMath.pow(end / start, (double) TRIES_PER_STEP / tries);
  }

  /** The loss allowed to the next try, in points, at least 0. */
  double loss(Dice dice) {
    if (++tries % TRIES_PER_STEP == 0) {
      mean *= factor;
    }
    return mean * LOSS[dice.bits() & LEVELS - 1];
  }
}
