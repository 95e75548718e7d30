package counterset.bound;

import counterset.score.Candidate;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;

/** How much of something each candidate brings when it is done, by candidate and kind of thing. */
final class Counts {

  private final int things;
  private final int[][] thing;
  private final int[][] amount;

  private Counts(int things, int candidates) {
    this.things = things;
    thing = new int[candidates][];
    amount = new int[candidates][];
  }

  /** One thing a candidate, such as its family. */
  static Counts one(List<Candidate> candidates, int things, ToIntFunction<Candidate> which) {
    Counts counts = new Counts(things, candidates.size());
    for (Candidate candidate : candidates) {
      int index = which.applyAsInt(candidate);
      counts.thing[candidate.index()] = index < 0 ? new int[0] : new int[] {index};
      counts.amount[candidate.index()] = index < 0 ? new int[0] : new int[] {1};
    }
    return counts;
  }

  /** How much of a thing a candidate brings. */
  interface Amount {
    int of(Candidate candidate, int thing);
  }

  /** Several things a candidate, such as sets for targets. */
  static Counts several(List<Candidate> candidates, int things, Amount amounts) {
    Counts counts = new Counts(things, candidates.size());
    for (Candidate candidate : candidates) {
      int[] found = new int[things];
      int[] amount = new int[things];
      int size = 0;
      for (int index = 0; index < things; index++) {
        int here = amounts.of(candidate, index);
        if (here != 0) {
          found[size] = index;
          amount[size++] = here;
        }
      }
      counts.thing[candidate.index()] = Arrays.copyOf(found, size);
      counts.amount[candidate.index()] = Arrays.copyOf(amount, size);
    }
    return counts;
  }

  /** Whether a candidate brings any of a thing. */
  boolean has(int candidate, int one) {
    return Arrays.binarySearch(thing[candidate], one) >= 0;
  }

  int things() {
    return things;
  }

  /** Adds what a candidate earns, or with sign -1 costs, by the multipliers of its things. */
  void price(int[] y, int at, int sign, int[] once) {
    for (int candidate = 0; candidate < thing.length; candidate++) {
      int[] index = thing[candidate];
      for (int i = 0; i < index.length; i++) {
        once[candidate] += sign * y[at + index[i]] * amount[candidate][i];
      }
    }
  }

  /** Adds how much a tour brings of each thing, or with sign -1 takes it away. */
  void slope(Tour tour, int at, int sign, double[] slope) {
    for (int candidate = 0; candidate < thing.length; candidate++) {
      int times = sign * tour.done[candidate];
      if (times != 0) {
        int[] index = thing[candidate];
        for (int i = 0; i < index.length; i++) {
          slope[at + index[i]] += times * amount[candidate][i];
        }
      }
    }
  }
}
