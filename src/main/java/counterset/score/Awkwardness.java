package counterset.score;

/** What is awkward about a modification, in points. */
public final class Awkwardness {

  private static final int PER_ITEM = 10;
  private static final int OTHER_POSITION = 4;
  private static final int OTHER_MUSCLES = 15;
  private static final int LEFT_LYING = 4;

  private Awkwardness() {}

  /**
   * Points, at least 0.
   *
   * @param newItems items that the modification needs and the exercise that it replaces does not
   * @param samePosition whether both are done in the same position
   * @param sharesMuscle whether both train a muscle group first
   * @param leftLying whether it leaves the client's equipment lying that the other exercise uses
   */
  public static int of(
      int newItems, boolean samePosition, boolean sharesMuscle, boolean leftLying) {
    return PER_ITEM * newItems
        + (samePosition ? 0 : OTHER_POSITION)
        + (sharesMuscle ? 0 : OTHER_MUSCLES)
        + (leftLying ? LEFT_LYING : 0);
  }
}
