package counterset.planning;

/**
 * How far a target's sets are from its share. All sets are counted in halves, so that whole numbers
 * suffice.
 */
public final class Shares {

  private Shares() {}

  /**
   * The squared distance in sets, rounded to the nearest whole number, half up.
   *
   * @param halfSets the target's sets, in halves
   * @param allHalfSets the sets of all targets, in halves
   * @param emphasis the target's emphasis
   * @param allEmphasis the sum of all emphases, at least 1
   */
  public static int squaredDistance(int halfSets, int allHalfSets, int emphasis, int allEmphasis) {
    long away = (long) halfSets * allEmphasis - (long) emphasis * allHalfSets;
    long unit = 4L * allEmphasis * allEmphasis;
    return Math.toIntExact((2 * away * away + unit) / (2 * unit));
  }
}
