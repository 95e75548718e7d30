package counterset.search;

import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.SplittableRandom;

/**
 * What a seed makes of exercises: a few points by which it likes some less, so that another seed
 * gives another session of nearly the same worth. The first seed has no mood.
 */
final class Mood {

  /** The seed of a problem that names none. */
  static final long NONE = 1;

  /** The points by which an exercise is liked less at most. */
  private static final int MOST = 8;

  private static final int PRIME = 31;

  private Mood() {}

  /** By candidate, the points that it costs, 0 to 8. */
  static int[] of(SessionFacts facts, long seed) {
    return facts.candidates().stream().mapToInt(it -> seed == NONE ? 0 : of(it, seed)).toArray();
  }

  private static int of(Candidate candidate, long seed) {
    long key = seed;
    for (char letter : candidate.exercise().id().toCharArray()) {
      key = PRIME * key + letter;
    }
    return new SplittableRandom(key).nextInt(MOST + 1);
  }
}
