package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;

/** Goes through all small changes of a session, in an order that is always the same. */
final class Steps {

  /** What is to be done with a change. */
  interface Taker {
    /** Told of each change in turn; it is another one after that. */
    void take(Change change);
  }

  private final SessionFacts facts;
  private final Pool pool;
  private final int perSuperset;
  private final int supersets;
  // Where nothing may change, and what alone may come where the coach keeps something.
  private final boolean[] fixed;
  private final Candidate[] kept;
  private final Change change;

  Steps(SessionFacts facts, boolean[] fixed, Candidate[] kept) {
    this.facts = facts;
    this.pool = Pool.of(facts);
    this.perSuperset = facts.perSuperset();
    this.supersets = facts.supersets();
    this.fixed = fixed;
    this.kept = kept;
    this.change = new Change(supersets * perSuperset);
  }

  /** All that put one exercise in: in one place, or on both sides; and those that empty a place. */
  void singles(Candidate[] session, Taker taker) {
    for (int place = 0; place < session.length; place++) {
      boolean open = place % perSuperset == 0 || session[place - 1] != null;
      if (open && isFree(session, place)) {
        for (Candidate candidate : facts.candidates()) {
          if (candidate != session[place] && mayStand(candidate, place)) {
            put(place, candidate);
            taker.take(change);
          }
        }
        empty(session, place, taker);
      }
    }
    if (perSuperset == 2) {
      for (int first = 0; first < session.length; first += 2) {
        bothSides(session, first, taker);
      }
    }
  }

  private void bothSides(Candidate[] session, int first, Taker taker) {
    for (Candidate candidate : facts.candidates()) {
      if (candidate.unilateral()
          && session[first] != candidate
          && session[first + 1] != candidate
          && isFree(session, first)
          && isFree(session, first + 1)
          && mayStand(candidate, first)
          && mayStand(candidate, first + 1)) {
        put(first, candidate);
        change.put(first + 1, candidate);
        taker.take(change);
      }
    }
  }

  /** No hole may come before an exercise of the same superset. */
  private void empty(Candidate[] session, int place, Taker taker) {
    boolean last = place % perSuperset == perSuperset - 1 || session[place + 1] == null;
    if (session[place] == null || kept[place] != null || !last) {
      return;
    }
    put(place, null);
    taker.take(change);
    boolean sides =
        perSuperset == 2
            && place % 2 == 1
            && session[place].unilateral()
            && session[place - 1] == session[place];
    if (sides && isFree(session, place - 1) && kept[place - 1] == null) {
      change.put(place - 1, null);
      taker.take(change);
    }
  }

  /** All that swap two exercises or two supersets. */
  void swaps(Candidate[] session, Taker taker) {
    for (int first = 0; first < session.length; first++) {
      for (int second = first + 1; second < session.length; second++) {
        if (canSwap(session, first, second) && session[first] != session[second]) {
          change.clear(true);
          change.put(first, session[second]);
          change.put(second, session[first]);
          taker.take(change);
        }
      }
    }
    for (int first = 0; perSuperset > 1 && first < supersets; first++) {
      for (int second = first + 1; second < supersets; second++) {
        if (isOpen(session, first) && isOpen(session, second)) {
          change.clear(true);
          for (int position = 0; position < perSuperset; position++) {
            int here = first * perSuperset + position;
            int there = second * perSuperset + position;
            change.put(here, session[there]);
            change.put(there, session[here]);
          }
          taker.take(change);
        }
      }
    }
  }

  private boolean canSwap(Candidate[] session, int first, int second) {
    return session[first] != null
        && session[second] != null
        && isFree(session, first)
        && isFree(session, second)
        && mayStand(session[second], first)
        && mayStand(session[first], second);
  }

  /** All that put two exercises side by side which can follow each other. */
  void pairs(Candidate[] session, Taker taker) {
    for (int place = 0; place + 1 < session.length; place++) {
      boolean beside = place % perSuperset < perSuperset - 1;
      boolean open = place % perSuperset == 0 || session[place - 1] != null;
      if (beside && open && isFree(session, place) && isFree(session, place + 1)) {
        for (Candidate candidate : facts.candidates()) {
          if (!candidate.unilateral()
              && candidate != session[place]
              && mayStand(candidate, place)) {
            partners(session, place, candidate, taker);
          }
        }
      }
    }
  }

  private void partners(Candidate[] session, int place, Candidate candidate, Taker taker) {
    for (Candidate partner : pool.partners(candidate).singles()) {
      if (partner != session[place + 1] && mayStand(partner, place + 1)) {
        put(place, candidate);
        change.put(place + 1, partner);
        taker.take(change);
      }
    }
  }

  private void put(int place, Candidate candidate) {
    change.clear(false);
    change.put(place, candidate);
  }

  private boolean isOpen(Candidate[] session, int superset) {
    for (int place = superset * perSuperset; place < (superset + 1) * perSuperset; place++) {
      if (!isFree(session, place) || kept[place] != null) {
        return false;
      }
    }
    return true;
  }

  private boolean isFree(Candidate[] session, int place) {
    return !fixed[place] && (kept[place] == null || session[place] != kept[place]);
  }

  private boolean mayStand(Candidate candidate, int place) {
    return kept[place] == null || kept[place] == candidate;
  }
}
