package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.model.Keep;
import counterset.model.MainLift;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.Shares;
import java.util.List;

/** What a session is as a whole: its volume, and the wishes that it meets. */
record StraightSession(SessionFacts facts, List<Candidate> work, ScoreSink sink) {

  void score(Candidate[] places) {
    volume();
    lifts();
    wishes();
    kept(places);
    if (facts.overrunSeconds() > 0) {
      sink.match(CLOCK_OVERRUN, facts.overrunSeconds(), NOWHERE, NOWHERE, NOWHERE);
    }
  }

  private void volume() {
    List<Target> targets = facts.problem().targets();
    int rounds = facts.clock().rounds();
    int[] halfSets = new int[targets.size()];
    int all = 0;
    for (int i = 0; i < halfSets.length; i++) {
      int target = i;
      halfSets[i] =
          rounds * work.stream().mapToInt(candidate -> candidate.halfSets()[target]).sum();
      all += halfSets[i];
      int direct = rounds * (int) work.stream().filter(c -> c.halfSets()[target] == 2).count();
      int missing = targets.get(i).minSets() - direct;
      if (missing > 0) {
        sink.match(TARGET_UNCOVERED, missing, NOWHERE, NOWHERE, i);
      }
    }
    int emphases = targets.stream().mapToInt(Target::emphasis).sum();
    for (int i = 0; i < halfSets.length; i++) {
      int away = Shares.squaredDistance(halfSets[i], all, targets.get(i).emphasis(), emphases);
      if (away > 0) {
        sink.match(UNEVEN_VOLUME, away, NOWHERE, NOWHERE, i);
      }
    }
  }

  private void lifts() {
    int done = work.stream().mapToInt(Candidate::lifts).reduce(0, (a, b) -> a | b);
    for (MainLift lift : MainLift.values()) {
      if ((facts.lifts() & ~done & 1 << lift.ordinal()) != 0) {
        sink.match(MAIN_LIFT_MISSING, 1, NOWHERE, NOWHERE, lift.ordinal());
      }
    }
  }

  private void wishes() {
    Problem problem = facts.problem();
    long used = work.stream().mapToLong(Candidate::uses).reduce(0, (a, b) -> a | b);
    for (int item = 0; item < problem.equipment().size(); item++) {
      if ((used & 1L << item) == 0) {
        sink.match(EQUIPMENT_UNUSED, 1, NOWHERE, NOWHERE, item);
      }
    }
    long included = work.stream().mapToLong(Candidate::included).reduce(0, (a, b) -> a | b);
    for (int wish = 0; wish < problem.include().size(); wish++) {
      if ((included & 1L << wish) == 0) {
        sink.match(INCLUDE_MISSING, 1, NOWHERE, NOWHERE, wish);
      }
    }
  }

  private void kept(Candidate[] places) {
    List<Keep> keeps = facts.problem().keep();
    for (int i = 0; i < keeps.size(); i++) {
      Keep keep = keeps.get(i);
      int place = (keep.at().superset() - 1) * facts.perSuperset() + keep.at().position();
      boolean there = place < places.length && places[place] != null;
      if (!there || !places[place].exercise().id().equals(keep.exercise())) {
        sink.match(KEPT_MOVED, 1, place < places.length ? place : NOWHERE, NOWHERE, i);
      }
    }
  }
}
