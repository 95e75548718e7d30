package counterset.score;

import counterset.model.Exercise;
import counterset.timeline.Handling;

/**
 * An exercise as this problem sees it: everything that scoring asks of it, worked out once.
 *
 * @param index its number among the candidates, from 0
 * @param primary its primary muscle groups, as bits
 * @param strained the joints of which it asks 2 or more, as bits
 * @param root equal for all variants of one exercise
 * @param family equal for all exercises of one family
 * @param halfSets what it gives each target of the problem: 2 for a direct set, 1 for an indirect
 *     one, 0 for none
 * @param unsafe how many limitations of the session it breaks
 * @param missing how many of its needs the client's equipment does not serve
 * @param stepsBelow steps below the client's level, at least 0; 0 with a load, which can be chosen,
 *     except for level 3
 * @param loaded whether it uses what the client has to lift, or there is nothing to lift
 * @param uses the equipment of the problem that it puts to use, as bits
 * @param included the bit of the problem's wish to include it, 0 without one
 * @param recentPoints what having been used lately costs
 * @param unsuitedTracks the tracks whose followers must not do it, as bits
 * @param merit what it is worth to the client
 */
public record Candidate(
    int index,
    Exercise exercise,
    Handling handling,
    boolean unilateral,
    boolean floor,
    int intensity,
    long primary,
    int strained,
    int root,
    int family,
    int[] halfSets,
    int unsafe,
    int missing,
    boolean aboveLevel,
    boolean excluded,
    int stepsBelow,
    boolean loaded,
    long uses,
    long included,
    int recentPoints,
    boolean liked,
    boolean disliked,
    long unsuitedTracks,
    Merit merit) {

  /** Whether the followers of a track must not do it. */
  public boolean isUnsuited(int track) {
    return (unsuitedTracks & 1L << track) != 0;
  }

  /** Whether nothing speaks against it in this session. */
  public boolean usable() {
    return unsafe == 0 && missing == 0 && !aboveLevel && !excluded;
  }

  /**
   * Whether the followers of a track may do this instead of an exercise that does not suit them. A
   * one-sided exercise has two intervals, which one for both sides may fill; not the other way
   * round.
   */
  public boolean standsInFor(Candidate main, int track) {
    return usable() && !isUnsuited(track) && (main.unilateral || !unilateral);
  }

  /** What is awkward about doing this instead of another, in points. */
  public int awkwardnessFor(Candidate main) {
    return Awkwardness.of(
        Long.bitCount(handling.needs() & ~main.handling.needs()),
        exercise.position() == main.exercise.position(),
        (primary & main.primary) != 0,
        main.loaded && !loaded);
  }

  /** Identity is enough: a problem compiles each exercise once. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return index;
  }

  @Override
  public String toString() {
    return exercise.id();
  }
}
