package counterset.solve;

import counterset.model.At;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.planning.Candidate;
import counterset.planning.FewChanges;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.StandIn;
import counterset.planning.moves.Near;
import counterset.planning.moves.NearSessions;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for better sessions that can be made of a given one. What the coach keeps and what was
 * chosen stays. It serves one thread.
 */
final class Rework {

  private final Problem problem;
  private final GivenSession given;
  private final Limit limit;
  private final Halt halt;
  private final SessionSolution start;
  private final Candidate[] home;
  private final Candidate[] kept;
  private final Map<Integer, List<Near>> searched = new HashMap<>();
  private long tries;

  /**
   * Begins with a session.
   *
   * @param chosen the places that stay as they are
   */
  Rework(GivenSession given, Collection<At> chosen, Limit limit, Halt halt) {
    this.problem = given.problem();
    this.given = given;
    this.limit = limit;
    this.halt = halt;
    SessionSolution whole = given.solution();
    this.home = places(whole);
    this.kept = places(SessionSolutions.empty(whole.getFacts(), Map.of()));
    this.start = SessionSolutions.with(whole, home, standIns(whole), fixed(chosen));
  }

  private boolean[] fixed(Collection<At> chosen) {
    int perSuperset = problem.clock().perSuperset();
    boolean[] fixed = new boolean[home.length];
    for (At at : chosen) {
      int place = (at.superset() - 1) * perSuperset + at.position();
      if (at.position() >= perSuperset || place >= home.length || home[place] == null) {
        throw new IllegalArgumentException(
            "The chosen place (" + at + ") must hold an exercise. Maybe another one is meant.");
      }
      int first = (at.superset() - 1) * perSuperset;
      for (int other = first; other < first + perSuperset; other++) {
        fixed[other] |= other == place || home[place].unilateral() && home[other] == home[place];
      }
    }
    return fixed;
  }

  /** The given session as it is. */
  Reworked unchanged() {
    return given.unchanged();
  }

  /**
   * The best found for each number of changes up to so many, by small changes one after another.
   *
   * @param most at least 0
   */
  List<Reworked> near(int most) {
    List<Reworked> found = new ArrayList<>();
    for (Near near : search(most)) {
      found.add(reworked(with(near.places(), near.standIns())));
    }
    return found;
  }

  private List<Near> search(int most) {
    return searched.computeIfAbsent(most, this::searchAnew);
  }

  private List<Near> searchAnew(int most) {
    NearSessions sessions = new NearSessions(start, kept, most, limit.effort().width());
    List<Near> found = sessions.best(halt::isStopped);
    tries += sessions.tries();
    return found;
  }

  /**
   * The best found with at most so many changes, by walks.
   *
   * @param near the walks begin with the best that is so near
   */
  Reworked within(int most, int near) {
    Near from = best(search(near).stream().filter(found -> found.changes() <= most).toList());
    return walk(from.places(), from.standIns(), new FewChanges(home, perSuperset(), most));
  }

  /**
   * The best found with any number of changes, by walks.
   *
   * @param near the walks begin with the best that is so near
   */
  Reworked free(int near) {
    Near from = best(search(near));
    Candidate[] places = from.places().clone();
    for (int place = 0; place < places.length; place++) {
      places[place] = kept[place] == null || isFixed(place) ? places[place] : kept[place];
    }
    return walk(places, from.standIns(), null);
  }

  private Reworked walk(Candidate[] places, Candidate[] standIns, FewChanges fence) {
    SessionFacts facts = start.getFacts();
    Search search = halt.begin(new Search(facts, Scoring.weights(problem)));
    SessionSolution best =
        search.best(
            limit.starts(),
            limit.termination(),
            () -> {
              SessionSolution from = with(places, standIns);
              from.setFence(fence);
              return from;
            });
    tries += limit.tries(facts.supersets());
    return reworked(best);
  }

  private static Near best(List<Near> found) {
    return Collections.max(found, Comparator.comparing(Rework::worth));
  }

  private static Worth worth(Near near) {
    return new Worth(near.hard(), near.medium(), near.soft());
  }

  private SessionSolution with(Candidate[] places, Candidate[] standIns) {
    boolean[] pinned = new boolean[home.length];
    for (int place = 0; place < pinned.length; place++) {
      pinned[place] = isFixed(place) || kept[place] != null;
    }
    return SessionSolutions.with(start, places, standIns, pinned);
  }

  private boolean isFixed(int place) {
    return start.getPlaces().get(place).isPinned();
  }

  private Reworked reworked(SessionSolution solution) {
    return given.reworked(FewChanges.count(home, places(solution), perSuperset()), solution);
  }

  private int perSuperset() {
    return problem.clock().perSuperset();
  }

  private static Candidate[] places(SessionSolution solution) {
    return solution.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
  }

  private static Candidate[] standIns(SessionSolution solution) {
    return solution.getStandIns().stream().map(StandIn::getCandidate).toArray(Candidate[]::new);
  }

  /** Whether the number of tries is the same whenever this is asked for. */
  private boolean isCounted() {
    return limit.seconds().isEmpty() && !halt.isStopped();
  }

  /**
   * The plan of what was found.
   *
   * @param asked the limit of all searches together
   */
  Plan plan(Reworked found, Limit asked) {
    return given.plan(found, asked, isCounted() ? tries : 0, !halt.isStopped());
  }
}
