package counterset.model;

/**
 * A muscle group that the session must cover.
 *
 * @param emphasis its share of the work relative to the other targets, at least 1
 * @param minSets the direct sets below which it counts as uncovered, at least 0
 */
public record Target(String muscle, int emphasis, int minSets) {

  public Target {
    if (emphasis < 1 || minSets < 0) {
      throw new IllegalArgumentException(
          "A target (" + muscle + ") has an emphasis of at least 1 and no negative minSets.");
    }
  }
}
