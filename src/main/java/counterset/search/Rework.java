package counterset.search;

import counterset.model.At;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.Lineup;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for better sessions that can be made of a given one. What the coach keeps and what was
 * chosen stays. It serves one thread.
 */
final class Rework {

  private final Problem problem;
  private final GivenSession given;
  private final Limit limit;
  private final Halt halt;
  private final Lineup start;
  private final boolean[] fixed;
  private final Candidate[] home;
  private final Candidate[] kept;
  private final Map<Integer, List<Near>> searched = new HashMap<>();
  private long moves;

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
    this.start = given.lineup();
    this.home = start.places();
    this.kept = Lineup.empty(start.facts()).places();
    this.fixed = fixed(chosen);
  }

  private boolean[] fixed(Collection<At> chosen) {
    int perSuperset = problem.clock().perSuperset();
    boolean[] stays = new boolean[home.length];
    for (At at : chosen) {
      int place = (at.superset() - 1) * perSuperset + at.position();
      if (at.position() >= perSuperset || place >= home.length || home[place] == null) {
        throw new IllegalArgumentException(
            "The chosen place (" + at + ") must hold an exercise. Maybe another one is meant.");
      }
      int first = (at.superset() - 1) * perSuperset;
      for (int other = first; other < first + perSuperset; other++) {
        stays[other] |= other == place || home[place].unilateral() && home[other] == home[place];
      }
    }
    return stays;
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
      found.add(reworked(new Lineup(start.facts(), near.places(), near.standIns())));
    }
    return found;
  }

  private List<Near> search(int most) {
    return searched.computeIfAbsent(most, this::searchAnew);
  }

  private List<Near> searchAnew(int most) {
    NearSessions sessions = new NearSessions(start, fixed, kept, most, limit.effort().width());
    List<Near> found = sessions.best(halt::isStopped);
    moves += sessions.tries();
    return found;
  }

  /**
   * The best found with at most so many changes, by annealing.
   *
   * @param near annealing begins with the best that is so near
   */
  Reworked within(int most, int near) {
    Near from = best(search(near).stream().filter(found -> found.changes() <= most).toList());
    return walk(
        from.places(), from.standIns(), Optional.of(new FewChanges(home, perSuperset(), most)));
  }

  /**
   * The best found with any number of changes, by annealing.
   *
   * @param near annealing begins with the best that is so near
   */
  Reworked free(int near) {
    Near from = best(search(near));
    Candidate[] places = from.places().clone();
    for (int place = 0; place < places.length; place++) {
      places[place] = kept[place] == null || fixed[place] ? places[place] : kept[place];
    }
    return walk(places, from.standIns(), Optional.empty());
  }

  private Reworked walk(Candidate[] places, Candidate[] standIns, Optional<Fence> fence) {
    Search search = halt.begin(new Search());
    Lineup from = new Lineup(start.facts(), places, standIns);
    boolean[] pinned = new boolean[home.length];
    for (int place = 0; place < pinned.length; place++) {
      pinned[place] = fixed[place] || kept[place] != null;
    }
    Task task = new Task(List.of(new Task.Day(from, pinned)), Optional.empty(), fence);
    Lineup best = search.best(task, problem.seed(), limit).get(0);
    moves += search.moves();
    return reworked(best);
  }

  private static Near best(List<Near> found) {
    return Collections.max(found, Comparator.comparing(Rework::worth));
  }

  private static Worth worth(Near near) {
    return new Worth(near.hard(), near.medium(), near.soft());
  }

  private Reworked reworked(Lineup lineup) {
    return given.reworked(FewChanges.count(home, lineup.places(), perSuperset()), lineup);
  }

  private int perSuperset() {
    return problem.clock().perSuperset();
  }

  /** Whether the number of moves is the same whenever this is asked for. */
  private boolean isCounted() {
    return limit.isCounted() && !halt.isStopped();
  }

  /**
   * The plan of what was found.
   *
   * @param asked the limit of all searches together
   */
  Plan plan(Reworked found, Limit asked) {
    return given.plan(found, asked, isCounted() ? moves : 0, !halt.isStopped());
  }
}
