package counterset.search;

import counterset.score.Candidate;
import counterset.score.SessionFacts;
import counterset.score.Turns;
import counterset.timeline.Kit;
import java.util.Arrays;

/**
 * Chooses stand-ins for a whole session, so that nothing is missing or repeated on a track where
 * that can be. An instance serves one thread.
 */
public final class Cast {

  private final SessionFacts facts;
  private final Ranking ranking;
  private final int perSuperset;
  private final int room;
  private final Candidate[] effective;
  private final int[] rootSeen;
  private int seen;

  public Cast(SessionFacts facts, Ranking ranking) {
    this.facts = facts;
    this.ranking = ranking;
    this.perSuperset = facts.perSuperset();
    this.room = Kit.roomInside(facts.clock());
    this.effective = new Candidate[facts.supersets() * perSuperset];
    int roots = facts.candidates().stream().mapToInt(Candidate::root).max().orElse(-1) + 1;
    this.rootSeen = new int[roots];
  }

  /**
   * Stand-ins for a session: those that it had before where they still can be, new ones elsewhere,
   * none where none is needed.
   *
   * @param before what stood in the places when {@code old} was chosen
   * @param places what stands there now
   * @param standIns of all tracks, to be filled
   */
  public void choose(
      Candidate[] before, Candidate[] old, Candidate[] places, Candidate[] standIns) {
    Arrays.fill(standIns, null);
    for (int track = 0; track < facts.tracks(); track++) {
      seen++;
      boolean complete = true;
      for (int place = 0; place < places.length; place++) {
        boolean suits = places[place] != null && !places[place].isUnsuited(track);
        effective[place] = suits ? places[place] : null;
        complete &= suits || places[place] == null;
        if (suits) {
          rootSeen[places[place].root()] = seen;
        }
      }
      if (!complete) {
        keep(track, before, old, places, standIns);
        fill(track, places, standIns);
      }
    }
  }

  private void keep(
      int track, Candidate[] before, Candidate[] old, Candidate[] places, Candidate[] standIns) {
    for (int place = 0; place < places.length; place++) {
      if (isOpen(track, places, place)) {
        Candidate candidate = former(track, before, old, places[place], place);
        if (candidate != null
            && candidate.standsInFor(places[place], track)
            && rootSeen[candidate.root()] != seen
            && fits(places, place, candidate)) {
          cast(track, places, standIns, place, candidate);
        }
      }
    }
  }

  /** What stood in for an exercise before, wherever it stood. */
  private static Candidate former(
      int track, Candidate[] before, Candidate[] old, Candidate main, int place) {
    int offset = track * before.length;
    if (before[place] == main && old[offset + place] != null) {
      return old[offset + place];
    }
    for (int other = 0; other < before.length; other++) {
      if (before[other] == main && old[offset + other] != null) {
        return old[offset + other];
      }
    }
    return null;
  }

  private void fill(int track, Candidate[] places, Candidate[] standIns) {
    for (int place = 0; place < places.length; place++) {
      if (isOpen(track, places, place) && standIns[track * places.length + place] == null) {
        Candidate candidate = first(track, places, place);
        if (candidate != null) {
          cast(track, places, standIns, place, candidate);
        }
      }
    }
  }

  /** The first that is new on the track, one that can follow its neighbour rather than not. */
  private Candidate first(int track, Candidate[] places, int place) {
    Candidate fallback = null;
    for (Candidate candidate : ranking.of(places[place], track).candidates()) {
      if (rootSeen[candidate.root()] != seen) {
        if (fits(places, place, candidate)) {
          return candidate;
        }
        fallback = fallback == null ? candidate : fallback;
      }
    }
    return fallback;
  }

  private void cast(
      int track, Candidate[] places, Candidate[] standIns, int place, Candidate candidate) {
    standIns[track * places.length + place] = candidate;
    effective[place] = candidate;
    rootSeen[candidate.root()] = seen;
  }

  private boolean isOpen(int track, Candidate[] places, int place) {
    return places[place] != null
        && places[place].isUnsuited(track)
        && Turns.firstSide(places, place - place % perSuperset, place) == place;
  }

  /** Whether it can be done right after and right before what is beside it in its superset. */
  private boolean fits(Candidate[] places, int place, Candidate candidate) {
    int position = place % perSuperset;
    if (places[place].unilateral()) {
      return true;
    }
    return (position == 0 || fits(effective[place - 1], candidate))
        && (position == perSuperset - 1 || fits(candidate, effective[place + 1]));
  }

  private boolean fits(Candidate last, Candidate next) {
    return last == null
        || next == null
        || facts.kit().seconds(last.handling().needs(), last.handling(), next.handling()) <= room;
  }
}
