package counterset.bound;

/**
 * Charges for each exercise that is heavier than some of one intensity before it, all but the first
 * of them: {@link Paths} have charged for the lightest so far, which is that one or a lighter one.
 */
final class LightBefore extends Split {

  private final int[] intensity;
  private final int[] charged;
  private final int light;
  private final int most;
  private final int weight;

  /**
   * A split.
   *
   * @param intensity by tag, of the exercise that is done then, 0 if none is
   * @param charged the same as far as it counts as heavier than what came before
   * @param light the intensity that counts when it comes before
   * @param most how many before it are told apart
   * @param weight scaled points a step
   */
  LightBefore(Diagram diagram, int[] intensity, int[] charged, int light, int most, int weight) {
    super(diagram);
    this.intensity = intensity;
    this.charged = charged;
    this.light = light;
    this.most = most;
    this.weight = weight;
  }

  @Override
  int classes() {
    return most + 1;
  }

  @Override
  int then(int before, int tag) {
    return intensity[tag] == light ? Math.min(most, before + 1) : before;
  }

  @Override
  int cost(int before, int tag) {
    return Math.max(0, before - 1) * weight * Math.max(0, charged[tag] - light);
  }

  @Override
  int last() {
    return 0;
  }

  @Override
  boolean matters(int tag) {
    return charged[tag] > light;
  }

  @Override
  boolean mustEndThere() {
    return false;
  }
}
