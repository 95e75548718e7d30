package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Work on the floor comes last; a unit is a superset that begins off the floor after floor work.
 */
public final class FloorEarly extends SessionConstraint {

  FloorEarly() {
    super(
        "floorEarly",
        points(20),
        "Work on the floor comes last.",
        "per superset off the floor after floor work",
        "Off the floor after floor work");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.supersets() > 1;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    boolean down = false;
    for (int first = 0; first < places.length; first += facts.perSuperset()) {
      boolean begins = false;
      for (int place = first; place < first + facts.perSuperset(); place++) {
        Candidate exercise = places[place];
        if (exercise != null && !begins) {
          begins = true;
          if (down && !exercise.floor()) {
            matches.match(1, place, null);
          }
        }
        down |= exercise != null && exercise.floor() && place == first + facts.perSuperset() - 1;
      }
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
