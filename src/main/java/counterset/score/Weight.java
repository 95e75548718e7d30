package counterset.score;

/**
 * How much a constraint of a session matters. A rule or a wish says what would mend it.
 *
 * @param perUnit the points of one unit unless a problem says otherwise, at least 1
 * @param remedy a sentence; empty text for one that is a matter of points
 */
record Weight(Level level, int perUnit, String remedy) {

  static Weight rule(String remedy) {
    return new Weight(Level.HARD, 1, remedy);
  }

  static Weight wish(String remedy) {
    return new Weight(Level.MEDIUM, 1, remedy);
  }

  static Weight points(int perUnit) {
    return new Weight(Level.SOFT, perUnit, "");
  }
}
