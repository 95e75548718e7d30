package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.model.Pairing;
import counterset.planning.Candidate;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.timeline.Kit;

/** From one place to the next: what is handled in between, and what neighbours share. */
record StraightWalk(SessionFacts facts, Candidate[] places, ScoreSink sink) {

  void score() {
    handling();
    neighbours();
  }

  private void handling() {
    Kit kit = facts.kit();
    int perSuperset = facts.perSuperset();
    int roomInside = Kit.roomInside(facts.clock());
    int roomInRest = Kit.roomInRest(facts.clock());
    long inUse = 0;
    int trips = 0;
    int last = NOWHERE;
    for (int first = 0; first < places.length; first += perSuperset) {
      for (int round = 0; round < facts.clock().rounds(); round++) {
        boolean inside = false;
        for (int place = first; place < first + perSuperset; place++) {
          Candidate next = places[place];
          if (next == null) {
            continue;
          }
          if (last != NOWHERE) {
            int items =
                Long.bitCount(Kit.takenOff(inUse, next.handling()))
                    + Long.bitCount(Kit.putOn(inUse, next.handling()));
            if (items > 0) {
              sink.match(EQUIPMENT_CHANGE, items, last, place, NOWHERE);
            }
            int seconds = kit.seconds(inUse, places[last].handling(), next.handling());
            if (seconds > 0) {
              sink.match(CHANGEOVER_SECONDS, seconds, last, place, NOWHERE);
              int excess = seconds - (inside ? roomInside : roomInRest);
              if (excess > 0) {
                sink.match(CHANGEOVER_TOO_LONG, excess, last, place, NOWHERE);
              }
            }
            if (places[last].floor() != next.floor() && trips++ > 0) {
              sink.match(FLOOR_TRIP, 1, last, place, NOWHERE);
            }
          }
          inUse = Kit.inUseAfter(inUse, next.handling());
          last = place;
          inside = true;
        }
      }
    }
  }

  private void neighbours() {
    boolean sameMuscleMatters = facts.problem().pairing() != Pairing.COMPOUND;
    int perSuperset = facts.perSuperset();
    int last = NOWHERE;
    for (int place = 0; place < places.length; place++) {
      if (places[place] == null) {
        continue;
      }
      if (last != NOWHERE) {
        boolean inside = last / perSuperset == place / perSuperset;
        Candidate before = places[last];
        Candidate after = places[place];
        if (!(inside && before == after && after.unilateral())) {
          if (sameMuscleMatters && (before.primary() & after.primary()) != 0) {
            sink.match(SAME_MUSCLE_IN_A_ROW, PairPoints.sameMuscle(inside), last, place, NOWHERE);
          }
          int joints = before.strained() & after.strained();
          if (joints != 0) {
            sink.match(JOINT_AGAIN, Integer.bitCount(joints), last, place, NOWHERE);
          }
        }
      }
      last = place;
    }
  }
}
