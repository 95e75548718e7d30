package counterset.explain;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.score.Constraints;
import counterset.score.PlanConstraint;
import java.util.List;
import java.util.Locale;

/** What each constraint has counted, in plain words. */
public final class ScoreWords {

  private ScoreWords() {}

  /** Points with their sign: {@code +12}, {@code 0}, {@code -20}. */
  public static String points(int points) {
    return points == 0 ? "0" : String.format(Locale.ROOT, "%+d", points);
  }

  /**
   * What a score comes to: {@code all rules kept, all wishes met, -12 points}; {@code 1 rule
   * broken} instead where rules are.
   */
  public static String sentence(int hard, int medium, int soft) {
    String rules =
        hard == 0 ? "all rules kept" : "rules broken, by " + English.count(-hard, "point");
    String wishes =
        medium == 0 ? "all wishes met" : "wishes not met, by " + English.count(-medium, "point");
    return rules + ", " + wishes + ", " + count(soft);
  }

  /** {@code -12 points}. */
  public static String count(int points) {
    return points(points) + (Math.abs(points) == 1 ? " point" : " points");
  }

  /** What it counted: {@code Equipment changes: 4 items taken up or put away}. */
  public static String counted(PlanScore.Line line, Plan plan) {
    PlanConstraint constraint = Constraints.of(line.id());
    List<Match> matches =
        plan.matches().stream().filter(match -> match.constraint().equals(line.id())).toList();
    int amount = matches.stream().mapToInt(Match::amount).sum();
    return constraint.topic() + ": " + constraint.counted(amount, matches);
  }
}
