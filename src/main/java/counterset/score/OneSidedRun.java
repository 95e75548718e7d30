package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * After two supersets of one exercise on one side and then the other, one on both sides at once
 * follows; a unit is a superset beyond the second running.
 */
public final class OneSidedRun extends SessionConstraint {

  private static final int MOST = 2;

  OneSidedRun() {
    super(
        "oneSidedRun",
        points(6),
        "After two one-sided supersets another kind follows.",
        "per one-sided superset beyond the second running",
        "One-sided supersets without a break");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.perSuperset() > 1 && facts.supersets() > MOST;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    int run = 0;
    for (int first = 0; first < places.length; first += facts.perSuperset()) {
      run = places[first] != null && places[first].unilateral() ? run + 1 : 0;
      if (run > MOST) {
        matches.match(1, first, null);
      }
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "time");
  }

  @Override
  public String said(Told told) {
    return "a third one-sided superset running, or more";
  }

  @Override
  public String total(Total total) {
    return "one-sided supersets follow each other without a break " + total.less() + " often";
  }
}
