package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;

/** Changes of order that keep the exercises. Each says false where it cannot be made. */
final class Reorders {

  private final Board board;
  private final int perSuperset;
  private final Dice dice;

  Reorders(Board board, Dice dice) {
    this.board = board;
    this.perSuperset = board.perSuperset();
    this.dice = dice;
  }

  /** Two single exercises change places. */
  boolean swapPlaces(Change change) {
    int first = dice.nextInt(board.size());
    int second = dice.nextInt(board.size());
    if (first == second
        || board.isPinned(first)
        || board.isPinned(second)
        || !board.isSingle(first)
        || !board.isSingle(second)) {
      return false;
    }
    change.put(first, board.at(second));
    change.put(second, board.at(first));
    return true;
  }

  /** Two whole supersets change places. */
  boolean swapSupersets(Change change) {
    int first = dice.nextInt(board.supersets());
    int second = dice.nextInt(board.supersets());
    if (first == second || !board.isFree(first, first) || !board.isFree(second, second)) {
      return false;
    }
    copy(change, first, second, false);
    copy(change, second, first, false);
    return true;
  }

  /** A run of supersets backwards; half the time the exercises inside each superset too. */
  boolean reverseRun(Change change) {
    int first = dice.nextInt(board.supersets());
    int last = first + dice.nextInt(board.supersets() - first);
    if (!board.isFree(first, last)) {
      return false;
    }
    boolean inside = first == last || dice.nextInt(2) == 0;
    for (int superset = first; superset <= last; superset++) {
      copy(change, first + last - superset, superset, inside);
    }
    return true;
  }

  /** A run of supersets moves earlier or later: the run and its neighbour run change places. */
  boolean moveRun(Change change) {
    int first = dice.nextInt(board.supersets());
    int last = first + dice.nextInt(board.supersets() - first);
    if (first == last || !board.isFree(first, last)) {
      return false;
    }
    int length = last - first + 1;
    int shift = 1 + dice.nextInt(length - 1);
    for (int i = 0; i < length; i++) {
      copy(change, first + (i + shift) % length, first + i, false);
    }
    return true;
  }

  private void copy(Change change, int from, int to, boolean backwards) {
    for (int position = 0; position < perSuperset; position++) {
      int source = backwards ? perSuperset - 1 - position : position;
      Candidate candidate = board.at(from * perSuperset + source);
      change.put(to * perSuperset + position, candidate);
    }
  }
}
