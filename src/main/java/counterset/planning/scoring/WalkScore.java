package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;
import counterset.timeline.Handling;
import counterset.timeline.Kit;

/**
 * What the way from one exercise to the next costs, step by step and round by round: handling,
 * changes of level, muscles and joints that neighbours share.
 *
 * <p>It remembers the state before each step. After a change it walks on only until it is back in
 * the state that it remembers, usually a step or two later.
 */
final class WalkScore {

  private final Tables tables;
  private final Kit kit;
  private final int perSuperset;
  private final int roomInside;
  private final int roomInRest;
  private final int wTooLong;
  private final int wItem;
  private final int wSecond;
  private final int wTrip;
  private final int wSameInside;
  private final int wSameAcross;
  private final int wJoint;

  private final int[] placeOf;
  private final boolean[] firstRound;
  private final int rounds;

  // Of the session last computed: the state before each step, and what the step costs.
  private final long[] inUseBefore;
  private final int[] lastBefore;
  private final Candidate[] doneBefore;
  private final int[] hardOf;
  private final int[] softOf;
  private final int[] tripsOf;
  private int hardSum;
  private int softSum;
  private int tripSum;

  private final int[] changed;
  private int changedSteps;

  // The state of the walk under way, and what its last step cost.
  private long inUse;
  private int last;
  private Candidate done;
  private int stepHard;
  private int stepSoft;
  private int stepTrips;

  private int hard;
  private int soft;

  WalkScore(SessionFacts facts, Tables tables) {
    this.tables = tables;
    kit = facts.kit();
    perSuperset = facts.perSuperset();
    rounds = facts.clock().rounds();
    roomInside = Kit.roomInside(facts.clock());
    roomInRest = Kit.roomInRest(facts.clock());
    wTooLong = tables.weight(SessionConstraint.CHANGEOVER_TOO_LONG);
    wItem = tables.weight(SessionConstraint.EQUIPMENT_CHANGE);
    wSecond = tables.weight(SessionConstraint.CHANGEOVER_SECONDS);
    wTrip = tables.weight(SessionConstraint.FLOOR_TRIP);
    int wSame =
        tables.sameMuscleMatters ? tables.weight(SessionConstraint.SAME_MUSCLE_IN_A_ROW) : 0;
    wSameInside = wSame * PairPoints.sameMuscle(true);
    wSameAcross = wSame * PairPoints.sameMuscle(false);
    wJoint = tables.weight(SessionConstraint.JOINT_AGAIN);
    int steps = facts.supersets() * rounds * perSuperset;
    placeOf = new int[steps];
    firstRound = new boolean[steps];
    for (int step = 0; step < steps; step++) {
      int superset = step / (rounds * perSuperset);
      placeOf[step] = superset * perSuperset + step % perSuperset;
      firstRound[step] = step / perSuperset % rounds == 0;
    }
    inUseBefore = new long[steps];
    lastBefore = new int[steps];
    doneBefore = new Candidate[steps];
    hardOf = new int[steps];
    softOf = new int[steps];
    tripsOf = new int[steps];
    changed = new int[steps];
  }

  void compute(Candidate[] places) {
    hardSum = 0;
    softSum = 0;
    tripSum = 0;
    inUse = 0;
    last = -1;
    done = null;
    for (int step = 0; step < placeOf.length; step++) {
      inUseBefore[step] = inUse;
      lastBefore[step] = last;
      doneBefore[step] = done;
      go(places, step);
      hardOf[step] = stepHard;
      softOf[step] = stepSoft;
      tripsOf[step] = stepTrips;
      hardSum += stepHard;
      softSum += stepSoft;
      tripSum += stepTrips;
    }
    settle(hardSum, softSum, tripSum);
  }

  /** Works out the session last computed with a change that is already made in the places. */
  void tryOut(Candidate[] places, Change change) {
    int newHard = hardSum;
    int newSoft = softSum;
    int newTrips = tripSum;
    list(change);
    int next = 0;
    while (next < changedSteps) {
      int step = changed[next];
      inUse = inUseBefore[step];
      last = lastBefore[step];
      done = doneBefore[step];
      while (step < placeOf.length) {
        if (next < changedSteps && changed[next] == step) {
          next++;
        } else if (isAsBefore(step)) {
          break;
        }
        go(places, step);
        newHard += stepHard - hardOf[step];
        newSoft += stepSoft - softOf[step];
        newTrips += stepTrips - tripsOf[step];
        step++;
      }
    }
    settle(newHard, newSoft, newTrips);
  }

  private boolean isAsBefore(int step) {
    return inUse == inUseBefore[step] && last == lastBefore[step] && done == doneBefore[step];
  }

  /** Lists the steps whose exercise changes, in order. */
  private void list(Change change) {
    changedSteps = 0;
    int from = 0;
    while (from < change.size()) {
      int superset = change.place(from) / perSuperset;
      int to = from + 1;
      while (to < change.size() && change.place(to) / perSuperset == superset) {
        to++;
      }
      for (int round = 0; round < rounds; round++) {
        int offset = (superset * (rounds - 1) + round) * perSuperset;
        for (int i = from; i < to; i++) {
          changed[changedSteps++] = offset + change.place(i);
        }
      }
      from = to;
    }
  }

  private void settle(int newHard, int newSoft, int trips) {
    hard = newHard;
    soft = newSoft - (trips > 1 ? (trips - 1) * wTrip : 0);
  }

  int hard() {
    return hard;
  }

  int soft() {
    return soft;
  }

  /** One step on. */
  private void go(Candidate[] places, int step) {
    stepHard = 0;
    stepSoft = 0;
    stepTrips = 0;
    Candidate next = places[placeOf[step]];
    if (next == null) {
      return;
    }
    Handling handling = next.handling();
    if (done != null) {
      boolean inside = last / perSuperset == step / perSuperset;
      if (done != next || (inUse & ~handling.keeps() | handling.needs() & ~inUse) != 0) {
        change(handling, inside ? roomInside : roomInRest);
        stepTrips = tables.floor[done.index()] == tables.floor[next.index()] ? 0 : 1;
      }
      if (firstRound[step]) {
        neighbours(next, inside);
      }
    }
    inUse = Kit.inUseAfter(inUse, handling);
    last = step;
    done = next;
  }

  private void change(Handling next, int room) {
    int items = Long.bitCount(Kit.takenOff(inUse, next)) + Long.bitCount(Kit.putOn(inUse, next));
    int seconds = kit.seconds(inUse, done.handling(), next);
    stepSoft -= wItem * items + wSecond * seconds;
    if (seconds > room) {
      stepHard -= wTooLong * (seconds - room);
    }
  }

  private void neighbours(Candidate next, boolean inside) {
    int before = done.index();
    int after = next.index();
    if (inside && before == after && tables.unilateral[after]) {
      return;
    }
    if ((tables.primary[before] & tables.primary[after]) != 0) {
      stepSoft -= inside ? wSameInside : wSameAcross;
    }
    stepSoft -= wJoint * Integer.bitCount(tables.strained[before] & tables.strained[after]);
  }
}
