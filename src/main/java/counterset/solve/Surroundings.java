package counterset.solve;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.planning.ExerciseFilter;
import java.util.List;

/** Puts a warm-up before the supersets and a cool-down behind them. */
final class Surroundings {

  private final Problem problem;
  private final Catalogue catalogue;
  private final ExerciseFilter filter;

  Surroundings(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.filter = new ExerciseFilter(problem, catalogue);
  }

  Session around(List<Superset> supersets) {
    List<Exercise> work =
        supersets.stream().flatMap(superset -> superset.distinct().stream()).toList();
    return new Session(
        new WarmUp(problem, catalogue, filter.part(Part.WARM_UP)).before(work),
        supersets,
        new CoolDown(problem, filter.part(Part.COOL_DOWN)).after(work));
  }
}
