package counterset.report;

import counterset.explain.Account;
import counterset.explain.Difference;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.PlanScore;
import java.util.List;
import java.util.Optional;

/**
 * A plan explained.
 *
 * @param account every point and where it comes from
 * @param places each filled place once, a one-sided exercise by its first, and who came close
 * @param keptOut what each limitation of the session keeps out
 * @param narrowed one sentence on each other thing that narrows the choice
 * @param limit how far from the best possible it is, in one sentence
 */
public record PlanAccount(
    Plan plan,
    Account account,
    List<Place> places,
    List<Kept> keptOut,
    List<String> narrowed,
    String limit) {

  public PlanAccount {
    places = List.copyOf(places);
    keptOut = List.copyOf(keptOut);
    narrowed = List.copyOf(narrowed);
  }

  /**
   * One place.
   *
   * @param isKept whether it stands there because the coach keeps it
   * @param runnersUp at most three, the best first
   */
  public record Place(At at, Exercise exercise, boolean isKept, List<RunnerUp> runnersUp) {

    public Place {
      runnersUp = List.copyOf(runnersUp);
    }
  }

  /**
   * An exercise that could stand at a place instead.
   *
   * @param partner who would have to fill the other place of the superset
   * @param score of the whole session with it
   * @param differences what changes in points, the largest first
   */
  public record RunnerUp(
      Exercise exercise,
      Optional<Exercise> partner,
      PlanScore score,
      List<Difference> differences) {

    public RunnerUp {
      differences = List.copyOf(differences);
    }
  }

  /**
   * What a limitation keeps out.
   *
   * @param name of the limitation
   * @param source what its rules rest on
   * @param number of the exercises that nothing else speaks against
   * @param first those that would have come closest to being in, each with what rules it out
   */
  public record Kept(String id, String name, String source, int number, List<String> first) {

    public Kept {
      first = List.copyOf(first);
    }
  }
}
