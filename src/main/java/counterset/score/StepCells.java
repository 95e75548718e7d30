package counterset.score;

/**
 * What each step of a session costs. It remembers the state of the room before each step. After a
 * change it walks on only until it is back in the state that it remembers, usually a step or two
 * later.
 */
final class StepCells {

  private final int perSuperset;
  private final int rounds;
  private final Tables tables;
  private final StepConstraint[] constraints;
  private final Level[] levels;
  private final int[] perUnit;
  private final StepWalk walk;

  // By index of the walk, of the session last computed: the state before it, and what it costs.
  private final long[] inUse;
  private final int[] last;
  private final Candidate[] done;
  private final Sums[] cells;
  private final int[][] counts;

  private final Sums fresh = new Sums();
  private final int[] changed;
  private int changes;

  StepCells(SessionFacts facts) {
    perSuperset = facts.perSuperset();
    rounds = facts.clock().rounds();
    tables = Tables.of(facts);
    Rules<StepConstraint> rules = Rules.weighed(StepConstraint.class, facts);
    constraints = rules.constraints().toArray(StepConstraint[]::new);
    levels = rules.levels();
    perUnit = rules.perUnit();
    walk = new StepWalk(facts);
    inUse = new long[walk.size()];
    last = new int[walk.size()];
    done = new Candidate[walk.size()];
    cells = new Sums[walk.size()];
    counts = new int[walk.size()][tables.stepTags.length];
    changed = new int[walk.size()];
    for (int index = 0; index < cells.length; index++) {
      cells[index] = new Sums();
    }
  }

  void compute(Candidate[] places, TagCounts tags, Sums sums) {
    walk.start();
    for (int index = 0; index < cells.length; index++) {
      remember(index);
      boolean steps = go(places, index, cells[index]);
      sums.add(cells[index], 1);
      for (int i = 0; i < tables.stepTags.length; i++) {
        counts[index][i] = steps ? tables.stepCounts.get(i).ofStep(walk.step) : 0;
        tags.count(tables.stepTags[i], counts[index][i], sums);
      }
    }
  }

  /**
   * Adds what a change makes of the session last computed, once it is made in the places.
   *
   * @param stays whether what comes next starts from there
   */
  void change(Candidate[] places, Change change, boolean stays, TagCounts tags, Sums sums) {
    list(change);
    int next = 0;
    while (next < changes) {
      int index = changed[next];
      walk.inUse = inUse[index];
      walk.last = last[index];
      walk.done = done[index];
      while (index < cells.length) {
        if (next < changes && changed[next] == index) {
          next++;
        } else if (isAsBefore(index)) {
          break;
        }
        if (stays) {
          remember(index);
        }
        boolean steps = go(places, index, fresh);
        sums.add(cells[index], -1);
        sums.add(fresh, 1);
        if (stays) {
          cells[index].set(fresh);
        }
        for (int i = 0; i < tables.stepTags.length; i++) {
          int now = steps ? tables.stepCounts.get(i).ofStep(walk.step) : 0;
          tags.count(tables.stepTags[i], now - counts[index][i], sums);
          counts[index][i] = stays ? now : counts[index][i];
        }
        index++;
      }
    }
  }

  private void remember(int index) {
    inUse[index] = walk.inUse;
    last[index] = walk.last;
    done[index] = walk.done;
  }

  private boolean isAsBefore(int index) {
    return walk.inUse == inUse[index] && walk.last == last[index] && walk.done == done[index];
  }

  /** Lists the indexes whose exercise changes, in order. */
  private void list(Change change) {
    changes = 0;
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
          changed[changes++] = offset + change.place(i);
        }
      }
      from = to;
    }
  }

  private boolean go(Candidate[] places, int index, Sums cell) {
    cell.clear();
    boolean steps = walk.go(places, index);
    if (steps) {
      for (int i = 0; i < constraints.length; i++) {
        int amount = constraints[i].measure(walk.step);
        if (amount != 0) {
          cell.add(levels[i], amount * perUnit[i]);
        }
      }
    }
    return steps;
  }
}
