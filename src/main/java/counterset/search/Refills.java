package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;

/** Changes that bring other exercises in. Each says false where it cannot be made. */
final class Refills {

  private static final int LONGEST_RUN = 3;
  private static final int MOST_TRIES = 12;
  private static final int NEARBY_PERCENT = 70;
  private static final int PARTNER_PERCENT = 90;

  private final Board board;
  private final Pool pool;
  private final Dice dice;
  private final Candidate[] contents;

  Refills(Board board, Pool pool, Dice dice) {
    this.board = board;
    this.pool = pool;
    this.dice = dice;
    this.contents = new Candidate[board.perSuperset()];
  }

  /**
   * Another exercise in one place, where its superset holds single exercises; else a new superset.
   */
  boolean onePlace(Change change) {
    int place = dice.nextInt(board.size());
    if (board.isPinned(place)) {
      return false;
    }
    int superset = place / board.perSuperset();
    int first = superset * board.perSuperset();
    for (int index = first; index < first + board.perSuperset(); index++) {
      Candidate candidate = board.at(index);
      if (candidate == null && board.isFree(superset, superset)
          || candidate != null && candidate.unilateral()) {
        return superset(change, superset);
      }
    }
    Pool.Choice choice = choiceForPlace(place);
    if (!choice.hasSingle()) {
      return false;
    }
    Candidate candidate = replacement(choice, board.at(place));
    if (board.isElsewhere(candidate.root(), place)) {
      return false;
    }
    change.put(place, candidate);
    return true;
  }

  /**
   * Half the time one that trains the same muscle first, if it is found soon: targets are seldom
   * covered twice over.
   */
  private Candidate replacement(Pool.Choice choice, Candidate old) {
    Candidate candidate = choice.single(dice);
    if (old != null && dice.nextInt(2) == 0) {
      for (int i = 0; i < MOST_TRIES && (candidate.primary() & old.primary()) == 0; i++) {
        candidate = choice.single(dice);
      }
    }
    return candidate;
  }

  /** Mostly what can follow the exercise beside it without a rest; else what is near. */
  private Pool.Choice choiceForPlace(int place) {
    int perSuperset = board.perSuperset();
    Candidate other = perSuperset == 1 ? null : board.at(beside(place, perSuperset));
    return other == null
            || !pool.partners(other).hasSingle()
            || dice.nextInt(100) >= PARTNER_PERCENT
        ? choiceNear(place)
        : pool.partners(other);
  }

  private int beside(int place, int perSuperset) {
    int position = place % perSuperset;
    boolean inTheMiddle = position > 0 && position < perSuperset - 1;
    return position == 0 || inTheMiddle && dice.nextInt(2) == 0 ? place + 1 : place - 1;
  }

  /**
   * Mostly the kind of a place or of one beside it, since a change of equipment costs most; else
   * all candidates.
   */
  private Pool.Choice choiceNear(int place) {
    int near = place + dice.nextInt(5) - 2;
    if (near < 0 || near >= board.size() || dice.nextInt(100) >= NEARBY_PERCENT) {
      return pool.all();
    }
    Candidate neighbour = board.at(near);
    return neighbour == null ? pool.all() : pool.kindOf(neighbour);
  }

  /** A whole superset anew. */
  boolean oneSuperset(Change change) {
    return superset(change, dice.nextInt(board.supersets()));
  }

  private boolean superset(Change change, int superset) {
    return board.isFree(superset, superset)
        && fill(change, superset, choiceNear(superset * board.perSuperset()), superset, superset);
  }

  /**
   * One to three neighbouring supersets anew with one kind of equipment on one level, which single
   * changes do not reach.
   */
  boolean runOfOneKind(Change change) {
    int length = 1 + dice.nextInt(Math.min(LONGEST_RUN, board.supersets()));
    int first = dice.nextInt(board.supersets() - length + 1);
    int last = first + length - 1;
    if (!board.isFree(first, last)) {
      return false;
    }
    Pool.Choice kind = pool.anyKind(dice);
    for (int superset = first; superset <= last; superset++) {
      if (!fill(change, superset, kind, first, last)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Fills a superset from a choice; not with an exercise that stands outside the supersets from
   * {@code first} to {@code last}: no use in trying that.
   */
  private boolean fill(Change change, int superset, Pool.Choice choice, int first, int last) {
    if (!pool.fill(contents, choice, dice)) {
      return false;
    }
    for (int position = 0; position < contents.length; position++) {
      if (board.isOutside(contents[position].root(), first, last)) {
        return false;
      }
      change.put(superset * contents.length + position, contents[position]);
    }
    return true;
  }
}
