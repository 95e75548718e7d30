package counterset.planning.constraints;

import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.TrackLine.Turn;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the followers of a track handle from one work interval to the next. */
final class TrackHandovers {

  private TrackHandovers() {}

  /** By how much each changeover exceeds its pause, where it does. */
  static List<TooLong> tooLong(TrackLine line) {
    SessionFacts facts = line.facts();
    List<TooLong> excess = new ArrayList<>();
    int number = 0;
    long inUse = 0;
    Step last = null;
    for (Step next : steps(line)) {
      if (last != null) {
        boolean inside = last.superset() == next.superset() && last.round() == next.round();
        int room = inside ? Kit.roomInside(facts.clock()) : Kit.roomInRest(facts.clock());
        int seconds =
            facts.kit().seconds(inUse, last.candidate().handling(), next.candidate().handling());
        if (seconds > room) {
          excess.add(new TooLong(line.track(), number, seconds - room));
        }
        number++;
      }
      inUse = Kit.inUseAfter(inUse, next.candidate().handling());
      last = next;
    }
    return excess;
  }

  private static List<Step> steps(TrackLine line) {
    SessionFacts facts = line.facts();
    List<Turn> done = line.turns().stream().filter(turn -> turn.candidate() != null).toList();
    List<Step> steps = new ArrayList<>();
    for (int superset = 0; superset < facts.supersets(); superset++) {
      for (int round = 1; round <= facts.clock().rounds(); round++) {
        for (Turn turn : done) {
          if (turn.place().getSuperset() == superset) {
            steps.add(new Step(superset, round, turn.candidate()));
          }
        }
      }
    }
    return steps;
  }

  /** Seconds by which a changeover exceeds its pause; the track is -1 for the session itself. */
  record TooLong(int track, int number, int seconds) implements Comparable<TooLong> {

    /** Without it, score analysis takes two of the same hash for one. */
    @Override
    public int compareTo(TooLong other) {
      return Comparator.comparingInt(TooLong::track)
          .thenComparingInt(TooLong::number)
          .compare(this, other);
    }
  }

  private record Step(int superset, int round, Candidate candidate) {}
}
