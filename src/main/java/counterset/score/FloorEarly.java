package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Work on the floor comes last; a unit is a superset that begins off the floor after floor work.
 * The upper body presses on the floor and may get up once; there a unit is a time after that.
 */
public final class FloorEarly extends SessionConstraint {

  FloorEarly() {
    super(
        "floorEarly",
        points(20),
        "Work on the floor comes last.",
        "per superset off the floor after floor work; for the upper body alone, which presses there, per time after the first that one gets up",
        "Off the floor after floor work");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.supersets() > 1;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    boolean upper = facts.patterns().isForUpperBody();
    int last = facts.perSuperset() - 1;
    boolean down = false;
    int free = upper ? 1 : 0;
    for (int first = 0; first < places.length; first += facts.perSuperset()) {
      int begin = first;
      while (begin < first + last && places[begin] == null) {
        begin++;
      }
      if (down && places[begin] != null && !places[begin].floor() && --free < 0) {
        matches.match(1, begin, null);
      }
      boolean endsThere = places[first + last] != null && places[first + last].floor();
      down = endsThere || down && !upper;
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "superset");
  }

  @Override
  public String said(Told told) {
    return told.exercise() + " comes after work on the floor";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " supersets come after work on the floor";
  }
}
