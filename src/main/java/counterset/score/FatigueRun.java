package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * The same fatigue is not asked for in each of four intervals running, unless few movement patterns
 * are wanted; a unit is an interval beyond the third.
 */
abstract class FatigueRun extends SessionConstraint {

  private static final int REST_AFTER = 3;

  private final Fatigue fatigue;
  private final String tired;

  FatigueRun(String id, Fatigue fatigue, String tired) {
    super(
        id,
        points(6),
        "After three intervals in a row " + tired + " rests.",
        "per interval beyond the third running, where many patterns are wanted",
        "Four intervals in a row for " + tired);
    this.fatigue = fatigue;
    this.tired = tired;
  }

  @Override
  boolean matters(SessionFacts facts) {
    return !facts.isNarrow() || countsWhereFew(facts);
  }

  /** Whether it counts where few patterns are wanted as well. */
  boolean countsWhereFew(SessionFacts facts) {
    return false;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    int run = 0;
    for (int place = 0; place < places.length; place++) {
      boolean tires =
          places[place] != null && (places[place].merit().fatigue() & fatigue.bit()) != 0;
      run = tires ? run + 1 : 0;
      if (run > REST_AFTER) {
        matches.match(1, place, null);
      }
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "time");
  }

  @Override
  public String said(Told told) {
    return tired + " works for the fourth time running or more";
  }

  @Override
  public String total(Total total) {
    return tired + " works without rest " + total.less() + " often";
  }
}
