package counterset.intake;

import counterset.json.Violation;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.problem.PlanFile;
import counterset.report.json.PlanDifferences;
import counterset.search.SessionPlanner;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan file as it is worked with: what counts are its supersets, whatever else it says.
 *
 * @param plan what the session of the file works out to
 * @param differences what the file says otherwise
 */
public record GivenPlan(PlanFile file, Plan plan, List<Violation> differences) {

  /**
   * Scores the session of a plan file as it stands.
   *
   * @param version of this program
   */
  public static GivenPlan of(PlanFile file, Catalogue catalogue, String version) {
    SolverNote note = new SolverNote(file.problem().seed(), "none", version, 0, true);
    Plan plan =
        new SessionPlanner(catalogue, version)
            .score(file.problem(), session(file, catalogue), note);
    return new GivenPlan(file, plan, PlanDifferences.of(file.document(), plan, catalogue));
  }

  private static Session session(PlanFile file, Catalogue catalogue) {
    List<Superset> supersets =
        file.supersets().stream()
            .map(s -> new Superset(s.number(), exercises(s.exercises(), catalogue)))
            .toList();
    return new Session(
        exercises(file.warmUp(), catalogue),
        supersets,
        exercises(file.coolDown(), catalogue),
        file.modifications().stream().map(it -> modifications(it, catalogue)).toList());
  }

  private static Map<At, Exercise> modifications(Map<At, String> ids, Catalogue catalogue) {
    Map<At, Exercise> modifications = new LinkedHashMap<>();
    ids.forEach((at, id) -> modifications.put(at, catalogue.exercises().get(id)));
    return modifications;
  }

  private static List<Exercise> exercises(List<String> ids, Catalogue catalogue) {
    return ids.stream().map(catalogue.exercises()::get).toList();
  }
}
