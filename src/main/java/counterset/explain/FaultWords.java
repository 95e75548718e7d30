package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.score.Constraints;
import counterset.score.Level;
import counterset.score.PlanConstraint;
import counterset.score.Told;

/** Where a rule is broken or a wish is not met, what it means and what would mend it. */
public final class FaultWords {

  private FaultWords() {}

  /**
   * One line: {@code 3A to 3B: 4 s too long for the changeover: Goblet squat to Side-lying leg
   * raise. Maybe ...}.
   */
  public static String of(Match match, Plan plan, Catalogue catalogue) {
    PlanConstraint constraint = Constraints.of(match);
    String said = constraint.said(Told.of(match, plan, new MatchNames(catalogue)));
    return place(match, catalogue) + said + ". " + constraint.remedy();
  }

  /** Whether a constraint is a rule or a wish, and not a matter of points. */
  public static boolean isFault(Match match) {
    return Constraints.of(match).level() != Level.SOFT;
  }

  /** Whether a constraint is a rule: its plan is not to be led as it is. */
  public static boolean isBrokenRule(Match match) {
    return Constraints.of(match).level() == Level.HARD;
  }

  private static String place(Match match, Catalogue catalogue) {
    String where = Constraints.of(match).where(match);
    String who =
        match.track().map(name -> "for " + new TrackWords(catalogue).ofName(name)).orElse("");
    if (where.isEmpty()) {
      return who.isEmpty() ? "" : English.capital(who) + ": ";
    }
    return where + (who.isEmpty() ? "" : ", " + who) + ": ";
  }
}
