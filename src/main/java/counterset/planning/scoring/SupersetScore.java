package counterset.planning.scoring;

import counterset.model.Pairing;
import counterset.model.SupersetKind;
import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.OneSidedShare;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;

/** What each superset is worth by itself: its pairing, its sides, its work, whether it is full. */
final class SupersetScore {

  private static final int MODERATE = 2;
  private static final SupersetKind[] KINDS = SupersetKind.values();

  private final SessionFacts facts;
  private final Tables tables;
  private final int perSuperset;
  private final int wSides;
  private final int wEmpty;
  private final int wLight;
  private final int wShare;
  private final int[] pairPoints = new int[KINDS.length];

  // By superset, of the session last computed.
  private final Worth[] worths;
  private final Worth total = new Worth();
  private final Worth fresh = new Worth();
  private final Worth tried = new Worth();

  SupersetScore(SessionFacts facts, Tables tables) {
    this.facts = facts;
    this.tables = tables;
    perSuperset = facts.perSuperset();
    wSides = tables.weight(SessionConstraint.SIDES_SPLIT);
    wEmpty = tables.weight(SessionConstraint.SUPERSET_EMPTY);
    wLight = tables.weight(SessionConstraint.TOO_LIGHT);
    wShare = perSuperset == 2 ? tables.weight(SessionConstraint.ONE_SIDED_SHARE) : 0;
    Pairing pairing = facts.problem().pairing();
    for (SupersetKind kind : KINDS) {
      pairPoints[kind.ordinal()] =
          tables.weight(SessionConstraint.OPPOSING_PAIR) * PairPoints.of(pairing, kind);
    }
    worths = new Worth[facts.supersets()];
    for (int superset = 0; superset < worths.length; superset++) {
      worths[superset] = new Worth();
    }
  }

  void compute(Candidate[] places) {
    total.clear();
    for (int superset = 0; superset < worths.length; superset++) {
      weigh(places, superset, worths[superset]);
      total.add(worths[superset], 1);
    }
    tried.clear();
    tried.add(total, 1);
  }

  /** Works out the session last computed with a change that is already made in the places. */
  void tryOut(Candidate[] places, Change change) {
    tried.clear();
    tried.add(total, 1);
    int done = -1;
    for (int i = 0; i < change.size(); i++) {
      int superset = change.place(i) / perSuperset;
      if (superset != done) {
        done = superset;
        weigh(places, superset, fresh);
        tried.add(worths[superset], -1);
        tried.add(fresh, 1);
      }
    }
  }

  int hard() {
    return tried.hard;
  }

  int medium() {
    return tried.medium;
  }

  int soft() {
    return tried.soft
        - (tried.lightness > 0 ? wLight * tried.lightness : 0)
        - (wShare == 0 ? 0 : wShare * OneSidedShare.distance(tried.oneSided, worths.length));
  }

  private void weigh(Candidate[] places, int superset, Worth worth) {
    worth.clear();
    int first = superset * perSuperset;
    boolean full = true;
    for (int place = first; place < first + perSuperset; place++) {
      Candidate candidate = places[place];
      if (candidate == null) {
        full = false;
        continue;
      }
      int index = candidate.index();
      worth.lightness += MODERATE - tables.intensity[index];
      worth.soft -= tables.placeSoft[index];
      if (tables.unilateral[index]
          && !Tables.stoodBefore(places, first, place)
          && (perSuperset != 2 || places[first] != places[first + 1])) {
        worth.hard -= wSides;
      }
    }
    if (!full) {
      worth.medium -= wEmpty;
    } else if (perSuperset > 1) {
      int kind = kind(places, first);
      worth.oneSided += kind == SupersetKind.UNILATERAL.ordinal() ? 1 : 0;
      worth.soft += pairPoints[kind];
    }
  }

  private int kind(Candidate[] places, int first) {
    int weakest = facts.kind(places[first], places[first + 1]).ordinal();
    for (int place = first + 1; place < first + perSuperset - 1; place++) {
      weakest = Math.max(weakest, facts.kind(places[place], places[place + 1]).ordinal());
    }
    return weakest;
  }

  private static final class Worth {
    private int hard;
    private int medium;
    private int soft;
    private int lightness;
    private int oneSided;

    private void clear() {
      hard = 0;
      medium = 0;
      soft = 0;
      lightness = 0;
      oneSided = 0;
    }

    private void add(Worth other, int times) {
      hard += times * other.hard;
      medium += times * other.medium;
      soft += times * other.soft;
      lightness += times * other.lightness;
      oneSided += times * other.oneSided;
    }
  }
}
