package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.Match;
import java.util.List;

/** The last superset is not among the hardest; a unit is a session that ends with a big lift. */
public final class HardFinish extends SessionConstraint {

  private static final int LONG_ENOUGH = 3;

  HardFinish() {
    super(
        "hardFinish",
        points(6),
        "The last superset is no big lift.",
        "per session that ends with one",
        "A big lift at the end");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.supersets() >= LONG_ENOUGH;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    for (int place = places.length - facts.perSuperset(); place < places.length; place++) {
      if (places[place] != null && places[place].merit().tier() >= Merit.HARD_WORK) {
        matches.match(1, place, null);
        return;
      }
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    return "the session ends with a big lift";
  }

  @Override
  public String total(Total total) {
    return "the session " + (total.better() ? "no longer ends" : "ends") + " with a big lift";
  }
}
