package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.score.ExerciseFilter;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The search behind a plan, with the time at which it found what. */
public final class TimedSearch {

  private TimedSearch() {}

  /**
   * A score that was the best so far of one of the searches.
   *
   * @param nanos since the beginning
   */
  public record Found(long nanos, int hard, int medium, int soft) {}

  /**
   * Searches for a session as {@link SessionPlanner} does. The time begins before the exercises are
   * filtered.
   *
   * @return what was found, in the order of the time
   */
  public static List<Found> run(Problem problem, Catalogue catalogue, Effort effort) {
    List<Found> found = Collections.synchronizedList(new ArrayList<>());
    long start = System.nanoTime();
    SessionFacts facts =
        new SessionFacts(
            problem,
            catalogue,
            new ExerciseFilter(problem, catalogue).main(),
            SessionLength.supersetsThatFit(problem.clock(), problem.minutes()));
    Search search = new Search();
    search.watch(
        score ->
            found.add(
                new Found(
                    System.nanoTime() - start,
                    score.hardScore(),
                    score.mediumScore(),
                    score.softScore())));
    Task task = Task.of(Task.Day.empty(Casting.of(Lineup.empty(facts))));
    search.best(task, problem.seed(), Limit.of(effort));
    return List.copyOf(found);
  }
}
