package counterset.report.text;

import counterset.explain.BoundWords;
import counterset.explain.ScoreWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.SolverNote;
import counterset.model.TargetCoverage;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What the plan covers, and what its score is made of. */
final class WorthPart {

  private WorthPart() {}

  static void write(Page page, Plan plan, Catalogue catalogue) {
    coverage(page, plan, catalogue);
    TrackPart.coverage(page, plan, catalogue);
    score(page, plan);
  }

  /** On a few lines. */
  static void brief(Page page, Plan plan, Catalogue catalogue) {
    List<String> targets =
        plan.coverage().stream()
            .map(
                target ->
                    English.lower(name(target, catalogue))
                        + String.format(Locale.ROOT, " %.1f", target.sets())
                        + (target.isCovered() ? "" : " (SHORT)"))
            .toList();
    page.blank();
    page.strong("", "COVERAGE  in sets, indirect ones by half");
    page.plain("  ", English.capital(English.list(targets)));
    PlanScore score = plan.score();
    page.blank();
    page.strong("", "SCORE  " + ScoreWords.sentence(score.hard(), score.medium(), score.soft()));
    plan.bound().ifPresent(bound -> page.plain("  ", BoundWords.of(bound, score)));
    solver(page, plan.solver());
  }

  private static void coverage(Page page, Plan plan, Catalogue catalogue) {
    int width = plan.coverage().stream().mapToInt(c -> name(c, catalogue).length()).max().orElse(1);
    String format = "  %-" + Math.min(50, Math.max(6, width)) + "s  %6s  %8s  %5s  %6s  %s";
    page.blank();
    page.strong("", "COVERAGE  sets are direct ones and half of the indirect ones");
    page.plain(
        "", String.format(Locale.ROOT, format, "", "direct", "indirect", "sets", "wanted", ""));
    for (TargetCoverage target : plan.coverage()) {
      String sets = String.format(Locale.ROOT, "%.1f", target.sets());
      String note = !target.isCovered() ? "SHORT" : "";
      Object[] cells = {
        name(target, catalogue), target.direct(), target.indirect(), sets, target.minSets(), note
      };
      page.plain("", String.format(Locale.ROOT, format, cells));
    }
  }

  private static String name(TargetCoverage target, Catalogue catalogue) {
    return catalogue.muscles().get(target.muscle()).name();
  }

  private static void score(Page page, Plan plan) {
    PlanScore score = plan.score();
    page.blank();
    page.strong("", "SCORE  " + ScoreWords.sentence(score.hard(), score.medium(), score.soft()));
    List<PlanScore.Line> lines =
        score.lines().stream()
            .filter(line -> line.matches() > 0)
            .sorted(
                Comparator.comparing(WorthPart::rank)
                    .thenComparing(line -> -Math.abs(line.score())))
            .toList();
    for (PlanScore.Line line : lines) {
      String level = rank(line) < 2 ? " (" + line.level() + ")" : "";
      String lead = String.format(Locale.ROOT, "%6s  ", ScoreWords.points(line.score()));
      page.plain(lead, ScoreWords.counted(line, plan) + level);
    }
    plan.bound().ifPresent(bound -> page.plain("        ", BoundWords.of(bound, score)));
    solver(page, plan.solver());
  }

  private static void solver(Page page, SolverNote note) {
    String how = note.moves() > 0 ? ", " + note.moves() + " moves" : "";
    page.faint(
        "  ",
        "Counterset "
            + note.version()
            + ", effort "
            + note.effort()
            + ", seed "
            + note.seed()
            + how);
  }

  private static int rank(PlanScore.Line line) {
    return List.of("hard", "medium", "soft").indexOf(line.level());
  }
}
