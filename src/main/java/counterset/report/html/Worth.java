package counterset.report.html;

import counterset.explain.BoundWords;
import counterset.explain.ScoreWords;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.SolverNote;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The score, what it is made of, and how far from the best possible the session is.
 *
 * @param points of each constraint that matches, rules first, then by size
 * @param limit the sentence on the best possible; empty text if that was not asked for
 */
record Worth(String score, List<Line> points, String limit, String note) {

  private static final List<String> LEVELS = List.of("hard", "medium", "soft");

  static Worth of(Plan plan) {
    PlanScore score = plan.score();
    List<Line> points = new ArrayList<>();
    score.lines().stream()
        .filter(line -> line.matches() > 0)
        .sorted(
            Comparator.comparing((PlanScore.Line line) -> LEVELS.indexOf(line.level()))
                .thenComparing(line -> -Math.abs(line.score())))
        .forEach(
            line ->
                points.add(
                    new Line(
                        ScoreWords.points(line.score()),
                        ScoreWords.counted(line, plan)
                            + (line.level().equals("soft") ? "" : " (" + line.level() + ")"))));
    return new Worth(
        score(score),
        points,
        plan.bound().map(bound -> BoundWords.of(bound, score)).orElse(""),
        note(plan.solver()));
  }

  static String score(PlanScore score) {
    return ScoreWords.sentence(score.hard(), score.medium(), score.soft());
  }

  private static String note(SolverNote note) {
    String how = note.moves() > 0 ? ", " + note.moves() + " moves" : "";
    return "Counterset "
        + note.version()
        + ", effort "
        + note.effort()
        + ", seed "
        + note.seed()
        + how;
  }
}
