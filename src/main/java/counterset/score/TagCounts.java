package counterset.score;

import java.util.Arrays;

/** The counts of a session while a search changes it; each change of one adds what it costs. */
final class TagCounts {

  private final Tables tables;
  private final Level[] level;
  private final int[] points;
  private final Sums ofNothing = new Sums();

  /** By tag, where in the points its count stands. */
  private final int[] at;

  // What to take back, as pairs of a tag and an amount.
  private int[] trail = new int[64];
  private int trailSize;

  TagCounts(SessionFacts facts) {
    tables = Tables.of(facts);
    level = tables.level;
    points = tables.points;
    at = tables.none.clone();
    for (int tag = 0; tag < at.length; tag++) {
      ofNothing.add(level[tag], points[at[tag]]);
    }
  }

  /** Forgets all counts, and adds what it costs that there is nothing. */
  void clear(Sums sums) {
    System.arraycopy(tables.none, 0, at, 0, at.length);
    trailSize = 0;
    sums.add(ofNothing, 1);
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
    int before = at[tag];
    int after = before + more;
    at[tag] = after;
    int dearer = points[after] - points[before];
    if (dearer != 0) {
      sums.add(level[tag], dearer);
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
      at[trail[trailSize]] -= trail[trailSize + 1];
    }
  }
}
