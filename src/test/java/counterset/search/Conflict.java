package counterset.search;

import counterset.fixture.Problems;
import counterset.fixture.Trade;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A problem whose conflict is known.
 *
 * @param obstacle what stands in the way
 * @param ways what frees it, in order
 */
record Conflict(
    String name, Catalogue catalogue, Problem problem, String obstacle, List<String> ways) {

  /** A conflict in the small trade; one target, the quadriceps, unless asked otherwise. */
  static Conflict of(
      String name,
      List<Exercise> exercises,
      UnaryOperator<Problems> asked,
      String obstacle,
      String... ways) {
    Catalogue catalogue = Trade.of(exercises);
    Problems plain = Problems.of(catalogue, Region.LOWER).targets(target("quadriceps", 1));
    return new Conflict(name, catalogue, asked.apply(plain).problem(), obstacle, List.of(ways));
  }

  static Target target(String muscle, int minSets) {
    return new Target(muscle, 1, minSets);
  }

  Plan plan() {
    return plan(problem, Effort.STANDARD);
  }

  Plan plan(Problem other, Effort effort) {
    return new SessionPlanner(catalogue, "test").plan(other, Limit.of(effort));
  }

  @Override
  public String toString() {
    return name;
  }
}
