package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;

/** Changes back to a given session, which a search draws too seldom by chance. */
final class Returns {

  private final Board board;
  private final Candidate[] home;
  private final Dice dice;

  Returns(Board board, Candidate[] home, Dice dice) {
    this.board = board;
    this.home = home;
    this.dice = dice;
  }

  /**
   * A whole superset, or one place of it, as it was; false if it has not changed or would be split.
   */
  boolean oneSuperset(Change change) {
    int perSuperset = board.perSuperset();
    int superset = dice.nextInt(board.supersets());
    int first = superset * perSuperset;
    int only = first + dice.nextInt(perSuperset);
    boolean single = board.isSingle(only) && home[only] != null && !home[only].unilateral();
    boolean one = single && dice.nextInt(2) == 0;
    for (int place = first; place < first + perSuperset; place++) {
      if ((!one || place == only) && board.at(place) != home[place]) {
        if (board.isPinned(place)) {
          return false;
        }
        change.put(place, home[place]);
      }
    }
    return change.size() > 0;
  }
}
