package counterset.planning.scoring;

import counterset.model.MainLift;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;

/**
 * How often each main lift is done, all in one number: 16 bits for each, so that an exercise more
 * or less is one addition.
 */
final class LiftCount {

  private static final int BITS = 16;
  private static final long MASK = (1L << BITS) - 1;
  private static final MainLift[] LIFTS = MainLift.values();

  private final long[] ofCandidate;
  private final int possible;
  private long counts;

  LiftCount(SessionFacts facts) {
    ofCandidate = facts.candidates().stream().mapToLong(LiftCount::spread).toArray();
    possible = facts.lifts();
  }

  private static long spread(Candidate candidate) {
    long counts = 0;
    for (MainLift lift : LIFTS) {
      counts |= (long) (candidate.lifts() >> lift.ordinal() & 1) << BITS * lift.ordinal();
    }
    return counts;
  }

  void add(int candidate) {
    counts += ofCandidate[candidate];
  }

  void remove(int candidate) {
    counts -= ofCandidate[candidate];
  }

  /** Main lifts that the session could have and has not. */
  int missing() {
    int missing = 0;
    long left = counts;
    for (int wanted = possible; wanted != 0; wanted >>= 1) {
      missing += (left & MASK) == 0 ? wanted & 1 : 0;
      left >>>= BITS;
    }
    return missing;
  }
}
