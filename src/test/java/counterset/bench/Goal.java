package counterset.bench;

/**
 * How many points are near enough to the best known ones.
 *
 * <p>Soft points have no natural zero: some good sessions have fewer than none. So there are two
 * readings of 99 %. One is about the span from a session that is merely allowed to the best known;
 * the other takes the number as it is, which for the usual 100 points or so leaves next to nothing
 * short of the best known itself.
 */
final class Goal {

  private static final int PERCENT = 100;

  private Goal() {}

  /**
   * Within 1 % of the span.
   *
   * @param merelyAllowed the soft points of a complete session that breaks no rule
   */
  static Points ofSpan(Points best, int merelyAllowed) {
    int span = Math.max(0, best.soft() - merelyAllowed);
    return new Points(best.medium(), best.soft() - span / PERCENT);
  }

  /** Within 1 % of the number. */
  static Points ofNumber(Points best) {
    return new Points(best.medium(), best.soft() - Math.abs(best.soft()) / PERCENT);
  }
}
