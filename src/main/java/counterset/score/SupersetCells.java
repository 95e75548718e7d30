package counterset.score;

/** What each superset of a session costs by itself, and each exercise in it. */
final class SupersetCells {

  private final int perSuperset;
  private final Tables tables;
  private final SupersetConstraint[] constraints;
  private final Rule[] rules;
  private final Group group;
  private final Matches matches = new Matches();

  // By superset, of the session last computed.
  private final Sums[] cells;
  private final int[][] counts;
  private final Sums fresh = new Sums();

  SupersetCells(SessionFacts facts) {
    perSuperset = facts.perSuperset();
    tables = Tables.of(facts);
    Rules<SupersetConstraint> weighed = Rules.weighed(SupersetConstraint.class, facts);
    constraints = weighed.constraints().toArray(SupersetConstraint[]::new);
    rules = weighed.rules().toArray(Rule[]::new);
    group = new Group(facts);
    cells = new Sums[facts.supersets()];
    counts = new int[cells.length][tables.supersetTags.length];
    for (int superset = 0; superset < cells.length; superset++) {
      cells[superset] = new Sums();
    }
  }

  void compute(Candidate[] places, TagCounts tags, Sums sums) {
    for (int superset = 0; superset < cells.length; superset++) {
      weigh(places, superset, cells[superset]);
      sums.add(cells[superset], 1);
      for (int i = 0; i < tables.supersetTags.length; i++) {
        counts[superset][i] = tables.supersetCounts.get(i).ofSuperset(group);
        tags.count(tables.supersetTags[i], counts[superset][i], sums);
      }
    }
  }

  /**
   * Adds what a change makes of the session last computed, once it is made in the places.
   *
   * @param stays whether what comes next starts from there
   */
  void change(Candidate[] places, Change change, boolean stays, TagCounts tags, Sums sums) {
    int done = -1;
    for (int i = 0; i < change.size(); i++) {
      int superset = change.place(i) / perSuperset;
      if (superset != done) {
        done = superset;
        weigh(places, superset, fresh);
        sums.add(cells[superset], -1);
        sums.add(fresh, 1);
        if (stays) {
          cells[superset].set(fresh);
        }
        for (int tag = 0; tag < tables.supersetTags.length; tag++) {
          int now = tables.supersetCounts.get(tag).ofSuperset(group);
          tags.count(tables.supersetTags[tag], now - counts[superset][tag], sums);
          counts[superset][tag] = stays ? now : counts[superset][tag];
        }
      }
    }
  }

  private void weigh(Candidate[] places, int superset, Sums cell) {
    cell.clear();
    int first = superset * perSuperset;
    for (int place = first; place < first + perSuperset; place++) {
      if (places[place] != null) {
        cell.add(tables.ofPosition[places[place].index()], 1);
      }
    }
    group.look(places, first);
    matches.cell = cell;
    for (int i = 0; i < constraints.length; i++) {
      matches.rule = rules[i];
      constraints[i].measure(group, matches);
    }
  }

  private static final class Matches implements SupersetConstraint.Matches {
    private Rule rule;
    private Sums cell;

    @Override
    public void match(int amount, int first, int second) {
      cell.add(rule, amount);
    }
  }
}
