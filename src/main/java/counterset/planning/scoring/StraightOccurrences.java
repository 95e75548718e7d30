package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.planning.Candidate;
import java.util.List;

/**
 * Every different exercise of a superset once: what it is by itself, and with each that follows.
 */
record StraightOccurrences(List<Occurrence> occurrences, ScoreSink sink) {

  /** An exercise and the index of its first place in a superset. */
  record Occurrence(int place, Candidate candidate) {}

  void score() {
    each();
    for (int later = 1; later < occurrences.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        pair(occurrences.get(earlier), occurrences.get(later));
      }
    }
  }

  private void each() {
    for (Occurrence occurrence : occurrences) {
      Candidate candidate = occurrence.candidate();
      int place = occurrence.place();
      if (candidate.missing() > 0) {
        sink.match(EQUIPMENT_MISSING, candidate.missing(), place, NOWHERE, NOWHERE);
      }
      if (candidate.unsafe() > 0) {
        sink.match(UNSAFE_FOR_CLIENT, candidate.unsafe(), place, NOWHERE, NOWHERE);
      }
      if (candidate.aboveLevel()) {
        sink.match(ABOVE_LEVEL, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.excluded()) {
        sink.match(EXCLUDED, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.stepsBelow() > 0) {
        sink.match(TOO_EASY, candidate.stepsBelow(), place, NOWHERE, NOWHERE);
      }
      if (candidate.recentPoints() > 0) {
        sink.match(USED_RECENTLY, candidate.recentPoints(), place, NOWHERE, NOWHERE);
      }
      if (candidate.liked()) {
        sink.match(LIKES, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.disliked()) {
        sink.match(DISLIKES, 1, place, NOWHERE, NOWHERE);
      }
    }
  }

  private void pair(Occurrence earlier, Occurrence later) {
    Candidate first = earlier.candidate();
    Candidate second = later.candidate();
    int steps = second.intensity() - first.intensity();
    if (steps > 0) {
      sink.match(LIGHT_BEFORE_HEAVY, steps, earlier.place(), later.place(), NOWHERE);
    }
    if (second.family() == first.family()) {
      sink.match(FAMILY_AGAIN, 1, earlier.place(), later.place(), NOWHERE);
    }
    if (second.root() == first.root()) {
      sink.match(EXERCISE_REPEATED, 1, earlier.place(), later.place(), NOWHERE);
    }
  }
}
