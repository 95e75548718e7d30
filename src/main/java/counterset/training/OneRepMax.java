package counterset.training;

/**
 * What could be lifted once, estimated from a set of several repetitions, by two formulas: Epley
 * (Poundage chart, 1985) and Brzycki (JOPERD 1993;64(1):88-90), both origins from memory.
 *
 * <p>Both suppose a set to fatigue, so a set that stopped early gives too little, never too much.
 * They agree at 10 repetitions and part from there on; published tables of repetitions end at 15
 * (NSCA, Essentials of Strength Training and Conditioning, 4th ed. 2016, table 17.7, from memory),
 * and so does the range here.
 *
 * @param epley kilograms
 * @param brzycki kilograms
 */
public record OneRepMax(double epley, double brzycki) {

  /** The most repetitions from which anything is estimated. */
  public static final int MOST_REPS = 15;

  /** Whether a set is within the range of the formulas. */
  public static boolean covers(int reps) {
    return reps >= 1 && reps <= MOST_REPS;
  }

  /**
   * The estimates from one set.
   *
   * @throws IllegalArgumentException if the repetitions are not 1 to 15
   */
  public static OneRepMax of(double kg, int reps) {
    if (!covers(reps)) {
      throw new IllegalArgumentException(
          "The repetitions (" + reps + ") must be 1 to " + MOST_REPS + ".");
    }
    return new OneRepMax(kg * (1 + reps / 30.0), kg * 36 / (37.0 - reps));
  }

  /** The smaller estimate. */
  public double low() {
    return Math.min(epley, brzycki);
  }

  /** The larger estimate. */
  public double high() {
    return Math.max(epley, brzycki);
  }

  /** The whole repetitions to expect with another load, each formula turned round; the fewer. */
  public int fewestReps(double kg) {
    return floor(Math.min(epleyReps(kg), brzyckiReps(kg)));
  }

  /** The same; the more. */
  public int mostReps(double kg) {
    return floor(Math.max(epleyReps(kg), brzyckiReps(kg)));
  }

  private double epleyReps(double kg) {
    return 30 * (epley / kg - 1);
  }

  private double brzyckiReps(double kg) {
    return 37 - 36 * kg / brzycki;
  }

  /** Rounded down, a hair above a whole number being that number. */
  private static int floor(double reps) {
    return (int) Math.max(0, Math.floor(reps + 1e-9));
  }
}
