package counterset.score;

import counterset.model.Pairing;
import counterset.model.SupersetKind;
import java.util.ArrayList;
import java.util.List;

/** One superset of a session, as constraints look at it. It is moved from one to the next. */
public final class Group {

  private final SessionFacts facts;
  private final int size;
  private final PairTable pairs;
  private Candidate[] places;
  private int first;
  private SupersetKind kind;

  Group(SessionFacts facts) {
    this(facts, facts.perSuperset());
  }

  /** Supersets of so many exercises. */
  Group(SessionFacts facts, int size) {
    this.facts = facts;
    this.size = size;
    this.pairs = PairTable.of(facts);
  }

  /** Looks at the superset that begins at a place. */
  void look(Candidate[] session, int firstPlace) {
    places = session;
    first = firstPlace;
    kind = size > 1 && isFilled() ? weakestLink() : null;
  }

  private boolean isFilled() {
    for (int place = first; place < first + size; place++) {
      if (places[place] == null) {
        return false;
      }
    }
    return true;
  }

  private SupersetKind weakestLink() {
    SupersetKind weakest = facts.kind(places[first], places[first + 1]);
    for (int place = first + 1; place < first + size - 1; place++) {
      SupersetKind link = facts.kind(places[place], places[place + 1]);
      weakest = link.compareTo(weakest) > 0 ? link : weakest;
    }
    return weakest;
  }

  /** How many positions it has. */
  public int size() {
    return size;
  }

  /** The index of its first place. */
  int first() {
    return first;
  }

  /** What stands at a position, from 0; null for nothing. */
  public Candidate at(int position) {
    return places[first + position];
  }

  /** Whether a position holds what an earlier one holds too: the other side of it. */
  public boolean isSecondSide(int position) {
    return at(position) != null && !counts(places, first, first + position);
  }

  /**
   * Whether an exercise counts at a place: both sides of a one-sided one in a superset are one.
   *
   * @param places the exercises of the session
   * @param first the first place of the superset
   */
  static boolean counts(Candidate[] places, int first, int place) {
    Candidate exercise = places[place];
    if (exercise != null && exercise.unilateral()) {
      for (int earlier = first; earlier < place; earlier++) {
        if (places[earlier] == exercise) {
          return false;
        }
      }
    }
    return exercise != null;
  }

  /** The exercises of a session in order, each once a superset. */
  static List<Candidate> work(Candidate[] places, int perSuperset) {
    List<Candidate> work = new ArrayList<>();
    for (int place = 0; place < places.length; place++) {
      if (counts(places, place - place % perSuperset, place)) {
        work.add(places[place]);
      }
    }
    return work;
  }

  /** Whether all positions are filled. */
  public boolean isFull() {
    return size > 1 ? kind != null : places[first] != null;
  }

  /** What its exercises are to each other; null for one with a hole or a single position. */
  public SupersetKind kind() {
    return kind;
  }

  /** What it costs that the exercise at a position is followed by the next. */
  int pairCost(int position) {
    return pairs.cost(at(position), at(position + 1));
  }

  /** What the coach asked to pair. */
  public Pairing pairing() {
    return facts.problem().pairing();
  }
}
