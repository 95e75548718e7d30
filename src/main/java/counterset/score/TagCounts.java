package counterset.score;

import java.util.Arrays;

/** The counts of a session while a search changes it; each change of one adds what it costs. */
final class TagCounts {

  private final Tables tables;
  private final int[] counts;
  private final Sums ofNothing = new Sums();

  // What to take back, as pairs of a tag and an amount.
  private int[] trail = new int[64];
  private int trailSize;

  TagCounts(SessionFacts facts) {
    tables = Tables.of(facts);
    counts = new int[tables.level.length];
    for (int tag = 0; tag < counts.length; tag++) {
      ofNothing.add(tables.level[tag], points(tag));
    }
  }

  /** Forgets all counts, and adds what it costs that there is nothing. */
  void clear(Sums sums) {
    Arrays.fill(counts, 0);
    trailSize = 0;
    sums.add(ofNothing, 1);
  }

  private int points(int tag) {
    return tables.points[tag][counts[tag] - tables.least[tag]];
  }

  /** Counts what some pairs of a tag and an amount say, or with a sign of -1 no longer. */
  void count(int[] pairs, int sign, Sums sums) {
    for (int i = 0; i < pairs.length; i += 2) {
      count(pairs[i], sign * pairs[i + 1], sums);
    }
  }

  /** Counts so many more of a tag. */
  void count(int tag, int more, Sums sums) {
    if (more == 0) {
      return;
    }
    int before = points(tag);
    counts[tag] += more;
    int after = points(tag);
    if (after != before) {
      sums.add(tables.level[tag], after - before);
    }
    if (trailSize + 2 > trail.length) {
      trail = Arrays.copyOf(trail, 2 * trail.length);
    }
    trail[trailSize++] = tag;
    trail[trailSize++] = more;
  }

  /** Takes the counts for settled: {@link #back} leads here. */
  void settle() {
    trailSize = 0;
  }

  /** Goes back to the counts last settled; sums are not touched. */
  void back() {
    while (trailSize > 0) {
      trailSize -= 2;
      counts[trail[trailSize]] -= trail[trailSize + 1];
    }
  }
}
