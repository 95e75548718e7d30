package counterset.model;

/**
 * How far a target is covered.
 *
 * @param direct sets in which it is a primary muscle group
 * @param indirect sets in which it helps
 * @param minSets the direct sets asked for
 * @param isCovered whether it gets what it needs; a small muscle group that came with a region may
 *     need no direct set
 */
public record TargetCoverage(
    String muscle, int direct, int indirect, int minSets, boolean isCovered) {

  /** Direct sets plus half of the indirect ones (fractional counting: Pelland 2024). */
  public double sets() {
    return direct + 0.5 * indirect;
  }
}
