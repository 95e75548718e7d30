package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.model.Target;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.Turns;
import counterset.timeline.Kit;
import java.util.List;

/**
 * Goes through a session once for each track, as its followers do it, and tells a sink every match.
 *
 * <p>{@link TrackScore} says the same as a sum.
 */
final class StraightTracks {

  private final SessionFacts facts;
  private final int perSuperset;
  private final Candidate[] effective;

  StraightTracks(SessionFacts facts) {
    this.facts = facts;
    this.perSuperset = facts.perSuperset();
    this.effective = new Candidate[facts.supersets() * perSuperset];
  }

  /**
   * Scores all tracks.
   *
   * @param places the candidates by place, null where there is none
   * @param standIns by track and place, null where there is none
   */
  void score(Candidate[] places, Candidate[] standIns, ScoreSink sink) {
    for (int track = 0; track < facts.tracks(); track++) {
      Turns.effective(places, standIns, track, perSuperset, effective);
      eachPlace(places, track, sink);
      pairs(places, track, sink);
      volume(places, track, sink);
      handling(track, sink);
    }
  }

  private boolean isOccurrence(Candidate[] places, int place) {
    return places[place] != null
        && Turns.firstSide(places, place - place % perSuperset, place) == place;
  }

  private static boolean isModified(Candidate[] places, int place, int track) {
    return places[place].isUnsuited(track);
  }

  private void eachPlace(Candidate[] places, int track, ScoreSink sink) {
    for (int place = 0; place < places.length; place++) {
      if (isOccurrence(places, place) && isModified(places, place, track)) {
        Candidate modification = effective[place];
        if (modification == null) {
          sink.match(MODIFICATION_MISSING, 1, place, NOWHERE, NOWHERE, track);
        } else {
          int points = modification.awkwardnessFor(places[place]);
          if (points > 0) {
            sink.match(MODIFICATION_AWKWARD, points, place, NOWHERE, modification.index(), track);
          }
        }
      }
    }
  }

  private void pairs(Candidate[] places, int track, ScoreSink sink) {
    for (int later = 1; later < places.length; later++) {
      if (!isOccurrence(places, later) || effective[later] == null) {
        continue;
      }
      boolean modified = isModified(places, later, track);
      for (int earlier = 0; earlier < later; earlier++) {
        if (isOccurrence(places, earlier)
            && effective[earlier] != null
            && effective[earlier].root() == effective[later].root()
            && (modified || isModified(places, earlier, track))) {
          int detail = effective[modified ? later : earlier].index();
          sink.match(TRACK_REPEATED, 1, earlier, later, detail, track);
        }
      }
    }
  }

  private void volume(Candidate[] places, int track, ScoreSink sink) {
    List<Target> targets = facts.problem().targets();
    for (int target = 0; target < targets.size(); target++) {
      if (facts.canTrain(track, target)) {
        int direct = 0;
        for (int place = 0; place < places.length; place++) {
          if (isOccurrence(places, place) && effective[place] != null) {
            direct += effective[place].halfSets()[target] >> 1;
          }
        }
        int missing = targets.get(target).minSets() - direct * facts.clock().rounds();
        if (missing > 0) {
          sink.match(TARGET_UNCOVERED, missing, NOWHERE, NOWHERE, target, track);
        }
      }
    }
  }

  private void handling(int track, ScoreSink sink) {
    Kit kit = facts.kit();
    long inUse = 0;
    int last = NOWHERE;
    for (int first = 0; first < effective.length; first += perSuperset) {
      for (int round = 0; round < facts.clock().rounds(); round++) {
        boolean inside = false;
        for (int place = first; place < first + perSuperset; place++) {
          Candidate next = effective[place];
          if (next == null) {
            continue;
          }
          if (last != NOWHERE) {
            int room = inside ? Kit.roomInside(facts.clock()) : Kit.roomInRest(facts.clock());
            int excess = kit.seconds(inUse, effective[last].handling(), next.handling()) - room;
            if (excess > 0) {
              sink.match(CHANGEOVER_TOO_LONG, excess, last, place, NOWHERE, track);
            }
          }
          inUse = Kit.inUseAfter(inUse, next.handling());
          last = place;
          inside = true;
        }
      }
    }
  }
}
