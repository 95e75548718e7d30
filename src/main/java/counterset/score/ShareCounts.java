package counterset.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What one {@link ShareConstraint} counts in a session while a search changes it. */
final class ShareCounts {

  // Larger counts are worked out each time.
  private static final int MOST = 64;
  private static final int MOST_IN_ALL = 512;

  private final SessionFacts facts;
  private final ShareConstraint constraint;
  private final Rule rule;
  private final int[][] ofCandidate;
  private final int[] counts;
  private int all;
  private final int[] settled;
  private int settledAll;

  /** By tag, the same for those of one kind: units by count of all and own, plus 1; 0 unasked. */
  private final int[][] units;

  private ShareCounts(SessionFacts facts, ShareConstraint constraint, Rule rule) {
    this.facts = facts;
    this.constraint = constraint;
    this.rule = rule;
    int tags = constraint.tags(facts);
    counts = new int[tags];
    settled = new int[tags];
    Map<Integer, int[]> byKind = new HashMap<>();
    units = new int[tags][];
    for (int tag = 0; tag < tags; tag++) {
      units[tag] =
          byKind.computeIfAbsent(constraint.kind(facts, tag), kind -> new int[MOST * MOST_IN_ALL]);
    }
    ofCandidate = new int[facts.candidates().size()][];
    for (Candidate candidate : facts.candidates()) {
      int[] pairs = new int[2 * tags];
      int size = 0;
      for (int tag = 0; tag < tags; tag++) {
        int amount = constraint.ofExercise(candidate, tag);
        if (amount > 0) {
          pairs[size++] = tag;
          pairs[size++] = amount;
        }
      }
      ofCandidate[candidate.index()] = Arrays.copyOf(pairs, size);
    }
  }

  /** Those of all such constraints that are not switched off. */
  static List<ShareCounts> of(SessionFacts facts) {
    Rules<ShareConstraint> rules = Rules.weighed(ShareConstraint.class, facts);
    List<ShareCounts> tallies = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      tallies.add(new ShareCounts(facts, rules.constraint(i), rules.rule(i)));
    }
    return tallies;
  }

  void clear() {
    Arrays.fill(counts, 0);
    all = 0;
  }

  /** Takes the counts for settled: {@link #back} leads here. */
  void settle() {
    System.arraycopy(counts, 0, settled, 0, counts.length);
    settledAll = all;
  }

  /** Goes back to the counts last settled. */
  void back() {
    System.arraycopy(settled, 0, counts, 0, counts.length);
    all = settledAll;
  }

  /** Counts an exercise, or with a sign of -1 no longer. */
  void count(Candidate exercise, int sign) {
    int[] pairs = ofCandidate[exercise.index()];
    for (int i = 0; i < pairs.length; i += 2) {
      counts[pairs[i]] += sign * pairs[i + 1];
      all += sign * pairs[i + 1];
    }
  }

  /** Adds what the counts cost. */
  void addTo(Sums sums) {
    int sum = 0;
    for (int tag = 0; tag < counts.length; tag++) {
      sum += units(tag);
    }
    sums.add(rule, sum);
  }

  private int units(int tag) {
    if (counts[tag] >= MOST || all >= MOST_IN_ALL) {
      return constraint.measure(facts, tag, counts[tag], all);
    }
    int cell = all * MOST + counts[tag];
    if (units[tag][cell] == 0) {
      units[tag][cell] = 1 + constraint.measure(facts, tag, counts[tag], all);
    }
    return units[tag][cell] - 1;
  }
}
