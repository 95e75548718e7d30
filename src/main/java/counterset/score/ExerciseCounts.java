package counterset.score;

import java.util.List;

/** What the exercises of a session cost together, each counted once a superset. */
final class ExerciseCounts {

  private final Tables tables;
  private final int perSuperset;
  private final List<ShareCounts> shares;
  private final List<OrderSum> orders;

  // By place: the exercise that counts there, null for none; now, and in the session last settled.
  private final Candidate[] counted;
  private final Candidate[] settled;
  private final Sums ofShares = new Sums();
  private final Sums now = new Sums();

  ExerciseCounts(SessionFacts facts) {
    tables = Tables.of(facts);
    perSuperset = facts.perSuperset();
    shares = ShareCounts.of(facts);
    orders = OrderSum.of(facts);
    counted = new Candidate[facts.supersets() * perSuperset];
    settled = new Candidate[counted.length];
  }

  void compute(Candidate[] places, TagCounts tags, Sums sums) {
    shares.forEach(ShareCounts::clear);
    for (int place = 0; place < counted.length; place++) {
      counted[place] = at(places, place);
      if (counted[place] != null) {
        count(counted[place], 1, tags, sums);
      }
      if (places[place] != null) {
        tags.count(tables.positionTags[places[place].index()], 1, sums);
      }
    }
    ofShares.clear();
    shares.forEach(share -> share.addTo(ofShares));
    settle();
    sums.add(ofShares, 1);
    for (OrderSum order : orders) {
      order.clear();
      order.change(counted, true, sums);
    }
  }

  private Candidate at(Candidate[] places, int place) {
    return Group.counts(places, place - place % perSuperset, place) ? places[place] : null;
  }

  private void count(Candidate exercise, int sign, TagCounts tags, Sums sums) {
    tags.count(tables.exerciseTags[exercise.index()], sign, sums);
    sums.add(tables.ofExercise[exercise.index()], sign);
    for (int i = 0; i < shares.size(); i++) {
      shares.get(i).count(exercise, sign);
    }
  }

  /**
   * Adds what a change makes of the session last computed, once it is made in the places and holds
   * what stood there before.
   *
   * @param stays whether what comes next starts from there
   */
  void change(Candidate[] places, Change change, boolean stays, TagCounts tags, Sums sums) {
    boolean others = !change.isReorder();
    boolean reordered = false;
    int done = -1;
    for (int i = 0; i < change.size(); i++) {
      int superset = change.place(i) / perSuperset;
      if (superset != done) {
        done = superset;
        int first = superset * perSuperset;
        for (int place = first; place < first + perSuperset; place++) {
          Candidate old = counted[place];
          Candidate next = at(places, place);
          counted[place] = next;
          reordered |= next != old && differs(old, next);
          if (others && next != old) {
            exchange(old, next, tags, sums);
          }
        }
      }
    }
    if (others) {
      positions(places, change, tags, sums);
      sums.add(ofShares, -1);
      now.clear();
      for (int i = 0; i < shares.size(); i++) {
        shares.get(i).addTo(now);
      }
      sums.add(now, 1);
      if (stays) {
        ofShares.set(now);
      }
    }
    for (int i = 0; reordered && i < orders.size(); i++) {
      orders.get(i).change(counted, stays, sums);
    }
    if (stays) {
      settle();
    } else {
      back();
    }
  }

  private void settle() {
    System.arraycopy(counted, 0, settled, 0, counted.length);
    for (int i = 0; i < shares.size(); i++) {
      shares.get(i).settle();
    }
  }

  private void back() {
    System.arraycopy(settled, 0, counted, 0, counted.length);
    for (int i = 0; i < shares.size(); i++) {
      shares.get(i).back();
    }
  }

  private boolean differs(Candidate old, Candidate now) {
    boolean differs = false;
    for (int i = 0; i < orders.size(); i++) {
      differs |= orders.get(i).differs(old, now);
    }
    return differs;
  }

  private void exchange(Candidate old, Candidate now, TagCounts tags, Sums sums) {
    if (old != null) {
      count(old, -1, tags, sums);
    }
    if (now != null) {
      count(now, 1, tags, sums);
    }
  }

  private void positions(Candidate[] places, Change change, TagCounts tags, Sums sums) {
    for (int i = 0; i < change.size(); i++) {
      Candidate old = change.candidate(i);
      Candidate now = places[change.place(i)];
      if (old != null) {
        tags.count(tables.positionTags[old.index()], -1, sums);
      }
      if (now != null) {
        tags.count(tables.positionTags[now.index()], 1, sums);
      }
    }
  }
}
