package counterset.referee;

/**
 * What an exercise next to a rest has in common with the one on its other side. What is not asked
 * of neighbours in a problem is left out, so that more of them are alike.
 *
 * @param muscles its primary muscle groups, as bits
 * @param joints the joints that it asks 2 or more of, as bits
 * @param pattern its movement pattern; empty if that does not matter
 */
record Neighbour(long muscles, long joints, String pattern) {

  /** There is none. */
  static final Neighbour NONE = new Neighbour(0, 0, "");

  boolean sharesMuscle(Neighbour other) {
    return (muscles & other.muscles) != 0;
  }

  int sharedJoints(Neighbour other) {
    return Long.bitCount(joints & other.joints);
  }

  boolean sharesPattern(Neighbour other) {
    return !pattern.isEmpty() && pattern.equals(other.pattern);
  }
}
