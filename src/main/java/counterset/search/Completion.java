package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.score.Change;
import counterset.score.ExerciseFilter;
import java.util.Set;

/** Adds to supersets that somebody wrote down what follows from them by fixed rules. */
public final class Completion {

  private final Problem problem;
  private final Catalogue catalogue;

  public Completion(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
  }

  /**
   * The session with modifications for its tracks, and with a warm-up and a cool-down where it has
   * none.
   *
   * @param written whose supersets are numbered from 1 without a gap
   */
  public Session of(Session written) {
    Session cast = problem.tracks().isEmpty() ? written : withModifications(written);
    Session whole =
        new Surroundings(problem, catalogue).around(cast.supersets(), cast.modifications());
    return new Session(
        written.warmUp().isEmpty() ? whole.warmUp() : written.warmUp(),
        whole.supersets(),
        written.coolDown().isEmpty() ? whole.coolDown() : written.coolDown(),
        whole.modifications());
  }

  private Session withModifications(Session written) {
    Exchange exchange =
        new Exchange(
            problem, catalogue, new ExerciseFilter(problem, catalogue).main(), written, Set.of());
    exchange.worth(new Change(exchange.places()));
    return exchange.session();
  }
}
