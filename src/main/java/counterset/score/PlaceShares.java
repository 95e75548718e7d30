package counterset.score;

import counterset.model.MovementPattern;
import counterset.model.MovementPattern.Group;
import java.util.Optional;

/**
 * The share of the places that each movement pattern is to get, 0 to 1. What nothing at hand can
 * fill leaves its share to the largest pattern of its group that something can: where nothing can
 * be rowed, the rear shoulders get the places of the row.
 */
final class PlaceShares {

  private final double[] shares;
  private final double[] due;

  /**
   * Hands on the shares of what cannot be filled.
   *
   * @param fillable by pattern
   */
  PlaceShares(Patterns patterns, boolean[] fillable) {
    shares = new double[patterns.count()];
    for (int pattern = 0; pattern < shares.length; pattern++) {
      int heir = fillable[pattern] ? pattern : heir(patterns, fillable, pattern);
      shares[heir] += patterns.share(pattern);
    }
    due = new double[shares.length];
    for (int pattern = 0; pattern < due.length; pattern++) {
      double own = patterns.share(pattern);
      due[pattern] = own > 0 ? own : shares[pattern];
    }
  }

  private static int heir(Patterns patterns, boolean[] fillable, int pattern) {
    Optional<Group> group = patterns.kind(pattern).map(MovementPattern::group);
    int heir = pattern;
    for (int other = 0; other < fillable.length; other++) {
      boolean sibling =
          group.isPresent() && group.equals(patterns.kind(other).map(MovementPattern::group));
      if (sibling
          && fillable[other]
          && (heir == pattern || patterns.share(other) > patterns.share(heir))) {
        heir = other;
      }
    }
    return heir;
  }

  /** What a pattern should get at least: its own share, or what it has been left if it has none. */
  double due(int pattern) {
    return due[pattern];
  }

  /** What a pattern may get. */
  double of(int pattern) {
    return shares[pattern];
  }
}
