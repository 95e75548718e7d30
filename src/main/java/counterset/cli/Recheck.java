package counterset.cli;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.problem.PlanFile;
import counterset.solve.SessionPlanner;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Scores the session of a plan file as it stands. */
final class Recheck {

  private final PlanFile file;
  private final Catalogue catalogue;

  Recheck(PlanFile file, Catalogue catalogue) {
    this.file = file;
    this.catalogue = catalogue;
  }

  /** The plan that the session of the file makes. */
  Plan plan() {
    SolverNote note = new SolverNote(file.problem().seed(), "none", Version.current(), 0, true);
    return new SessionPlanner(catalogue, Version.current()).score(file.problem(), session(), note);
  }

  /** The session of the file. */
  Session session() {
    List<Superset> supersets =
        file.supersets().stream()
            .map(s -> new Superset(s.number(), exercises(s.exercises())))
            .toList();
    return new Session(
        exercises(file.warmUp()),
        supersets,
        exercises(file.coolDown()),
        file.modifications().stream().map(this::modifications).toList());
  }

  private Map<At, Exercise> modifications(Map<At, String> ids) {
    Map<At, Exercise> modifications = new LinkedHashMap<>();
    ids.forEach((at, id) -> modifications.put(at, catalogue.exercises().get(id)));
    return modifications;
  }

  private List<Exercise> exercises(List<String> ids) {
    return ids.stream().map(catalogue.exercises()::get).toList();
  }
}
