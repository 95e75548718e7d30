package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Change;

/** Changes back to a given session, which a search draws too seldom by chance. */
final class Returns {

  private final Lineup lineup;
  private final Candidate[] home;
  private final Dice dice;

  Returns(Lineup lineup, Candidate[] home, Dice dice) {
    this.lineup = lineup;
    this.home = home;
    this.dice = dice;
  }

  /**
   * A whole superset, or one place of it, as it was; false if it has not changed or would be split.
   */
  boolean oneSuperset(Change change) {
    int perSuperset = lineup.perSuperset();
    int superset = dice.nextInt(lineup.supersets());
    int first = superset * perSuperset;
    int only = first + dice.nextInt(perSuperset);
    boolean single = lineup.isSingle(only) && home[only] != null && !home[only].unilateral();
    boolean one = single && dice.nextInt(2) == 0;
    for (int place = first; place < first + perSuperset; place++) {
      if ((!one || place == only) && lineup.at(place) != home[place]) {
        if (lineup.isPinned(place)) {
          return false;
        }
        change.put(place, home[place]);
      }
    }
    return change.size() > 0;
  }
}
