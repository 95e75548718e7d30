package counterset.solve;

import counterset.model.Catalogue;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Target;
import counterset.model.Track;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.constraints.SessionConstraint;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** The plan of each track: the session as its followers do it, by itself. */
final class TrackPlans {

  private final Problem problem;
  private final Catalogue catalogue;
  private final SessionFacts facts;
  private final SolverNote note;

  TrackPlans(Catalogue catalogue, SessionFacts facts, SolverNote note) {
    this.problem = facts.problem();
    this.catalogue = catalogue;
    this.facts = facts;
    this.note = note;
  }

  List<Track> of(Session session) {
    return IntStream.range(0, problem.tracks().size())
        .mapToObj(track -> track(session, track))
        .toList();
  }

  private Track track(Session main, int track) {
    Problem followers = followers(track);
    TrackSession own = new TrackSession(main, problem, followers, track, catalogue);
    SessionSolution solution = Scoring.solution(followers, own.session(), catalogue);
    List<Match> matches =
        Scoring.matches(solution).stream().filter(match -> !isBothIntervals(match, main)).toList();
    Plan plan = new Assembly(followers, catalogue).plan(own.session(), matches, List.of(), note);
    return new Track(List.copyOf(problem.tracks().get(track)), own.applied(), plan);
  }

  /** Whether it is about one modification that fills both intervals of a one-sided exercise. */
  private static boolean isBothIntervals(Match match, Session main) {
    return match.constraint().equals(SessionConstraint.EXERCISE_REPEATED.id())
        && match.places().stream().map(at -> at.superset()).distinct().count() == 1
        && main.supersets().get(match.places().get(0).superset() - 1).isUnilateral();
  }

  /** What the followers of a track ask for: nothing that it cannot train. */
  private Problem followers(int track) {
    Set<String> limitations = new LinkedHashSet<>(problem.limitations());
    limitations.addAll(problem.tracks().get(track));
    List<Target> targets = new ArrayList<>();
    for (int target = 0; target < problem.targets().size(); target++) {
      if (facts.canTrain(track, target)) {
        targets.add(problem.targets().get(target));
      }
    }
    return new Problem(
        problem.title(),
        problem.minutes(),
        problem.clock(),
        targets.isEmpty() ? problem.targets() : targets,
        problem.equipment(),
        limitations,
        List.of(),
        problem.level(),
        problem.pairing(),
        Set.of(),
        problem.exclude(),
        List.of(),
        problem.likes(),
        problem.dislikes(),
        problem.recent(),
        problem.date(),
        problem.weights(),
        problem.seed());
  }
}
