package counterset.score;

import counterset.timeline.Kit;

/**
 * Goes from exercise to exercise in the order of time, round by round, and keeps what is in use. An
 * index is a place in a round; one with nothing in it is passed over.
 */
final class StepWalk {

  private final int perSuperset;
  private final int[] placeOf;
  private final boolean[] firstRound;

  /** The step that was gone last. */
  final Step step;

  /** What is in use, as bits of the kit. */
  long inUse;

  /** The index of the exercise that was done last, or -1. */
  int last;

  /** The exercise that was done last, or null. */
  Candidate done;

  /** The place that the last step left. */
  int from;

  StepWalk(SessionFacts facts) {
    perSuperset = facts.perSuperset();
    int rounds = facts.clock().rounds();
    int size = facts.supersets() * rounds * perSuperset;
    placeOf = new int[size];
    firstRound = new boolean[size];
    for (int index = 0; index < size; index++) {
      int superset = index / (rounds * perSuperset);
      placeOf[index] = superset * perSuperset + index % perSuperset;
      firstRound[index] = index / perSuperset % rounds == 0;
    }
    step = new Step(facts);
  }

  /** How many indexes there are. */
  int size() {
    return placeOf.length;
  }

  int place(int index) {
    return placeOf[index];
  }

  /** Begins with nothing in use. */
  void start() {
    inUse = 0;
    last = -1;
    done = null;
  }

  /** Goes on to an index; whether there is a step to look at: from one exercise to another. */
  boolean go(Candidate[] places, int index) {
    Candidate next = places[placeOf[index]];
    if (next == null) {
      return false;
    }
    boolean steps = done != null;
    if (steps) {
      boolean inside = last / perSuperset == index / perSuperset;
      step.look(done, next, inUse, inside, firstRound[index]);
      from = placeOf[last];
    }
    inUse = Kit.inUseAfter(inUse, next.handling());
    last = index;
    done = next;
    return steps;
  }
}
