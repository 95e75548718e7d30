package counterset.search;

import counterset.score.Candidate;

/** Puts candidates in the order of their worth. */
final class BestFirst {

  private static final int MOST_RANKS = 512;

  private BestFirst() {}

  /**
   * The best first, nearly: by counting, since a large catalogue has long lists. Where weights make
   * the worths range wide, those that are about equal stay as they were.
   */
  static Candidate[] of(Candidate[] candidates, int[] worths, int count) {
    int[] ranks = ranks(worths, count);
    int[] next = new int[MOST_RANKS + 1];
    for (int i = 0; i < count; i++) {
      next[ranks[i] + 1]++;
    }
    for (int rank = 1; rank < next.length; rank++) {
      next[rank] += next[rank - 1];
    }
    Candidate[] sorted = new Candidate[count];
    for (int i = 0; i < count; i++) {
      sorted[next[ranks[i]]++] = candidates[i];
    }
    return sorted;
  }

  private static int[] ranks(int[] worths, int count) {
    int most = Integer.MIN_VALUE;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < count; i++) {
      most = Math.max(most, worths[i]);
      least = Math.min(least, worths[i]);
    }
    long range = Math.max(MOST_RANKS, (long) most - least + 1);
    int[] ranks = new int[count];
    for (int i = 0; i < count; i++) {
      ranks[i] = (int) (((long) most - worths[i]) * MOST_RANKS / range);
    }
    return ranks;
  }
}
