package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Match;
import counterset.model.Need;
import counterset.model.Opposites;
import counterset.model.Owned;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.model.TargetCoverage;
import counterset.model.Totals;
import counterset.model.Track;
import counterset.score.Constraints;
import counterset.score.Lineup;
import counterset.score.TargetUncovered;
import counterset.timeline.Timeline;
import java.util.List;
import java.util.Optional;

/** Puts together all that follows from a session. */
final class Assembly {

  private final Problem problem;
  private final Catalogue catalogue;

  Assembly(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
  }

  /**
   * A plan.
   *
   * @param lineup the session as it was scored
   */
  Plan plan(Session session, Lineup lineup, SolverNote note) {
    List<Track> tracks = new TrackPlans(catalogue, lineup.facts(), note).of(session);
    return plan(session, Scoring.matches(lineup), tracks, note);
  }

  /** A plan of which the matches and the tracks are known. */
  Plan plan(Session session, List<Match> matches, List<Track> tracks, SolverNote note) {
    Timeline timeline = Timeline.of(session, problem.clock(), problem.minutes(), catalogue);
    Opposites opposites = new Opposites(catalogue);
    return new Plan(
        problem,
        session,
        session.supersets().stream().map(Superset::exercises).map(opposites::kind).toList(),
        timeline.intervals(),
        timeline.changeovers(),
        coverage(session, matches),
        FetchList.of(problem, session, catalogue),
        totals(session, timeline),
        Scoring.score(problem, matches),
        matches,
        Cautions.of(problem, catalogue),
        tracks,
        note,
        Optional.empty());
  }

  private List<TargetCoverage> coverage(Session session, List<Match> matches) {
    int rounds = problem.clock().rounds();
    List<Exercise> work = session.work().toList();
    return problem.targets().stream()
        .map(
            target ->
                new TargetCoverage(
                    target.muscle(),
                    rounds
                        * (int)
                            work.stream()
                                .filter(e -> e.primary().contains(target.muscle()))
                                .count(),
                    rounds
                        * (int)
                            work.stream()
                                .filter(e -> e.secondary().contains(target.muscle()))
                                .count(),
                    target.minSets(),
                    matches.stream().noneMatch(match -> isShort(match, target))))
        .toList();
  }

  private static boolean isShort(Match match, Target target) {
    return Constraints.of(match) instanceof TargetUncovered
        && match.track().isEmpty()
        && match.subject().equals(Optional.of(target.muscle()));
  }

  private Totals totals(Session session, Timeline timeline) {
    List<Exercise> positions =
        session.supersets().stream().flatMap(superset -> superset.exercises().stream()).toList();
    List<Changeover> changeovers = timeline.changeovers();
    return new Totals(
        timeline.end(),
        timeline.unused(),
        seconds(timeline, IntervalKind.WORK),
        seconds(timeline, IntervalKind.REST),
        (int)
            session.supersets().stream()
                .filter(superset -> !superset.exercises().isEmpty())
                .count(),
        (int) session.work().distinct().count(),
        positions.size(),
        (int) positions.stream().filter(this::isLoaded).count(),
        changeovers.stream().mapToInt(c -> c.takeOff().size() + c.putOn().size()).sum(),
        changeovers.stream().mapToInt(Changeover::seconds).sum(),
        (int) changeovers.stream().filter(Changeover::changesLevel).count());
  }

  private static int seconds(Timeline timeline, IntervalKind kind) {
    return timeline.intervals().stream()
        .filter(i -> i.kind() == kind)
        .mapToInt(Interval::seconds)
        .sum();
  }

  private boolean isLoaded(Exercise exercise) {
    return exercise.needs().stream()
        .map(Need::equipment)
        .anyMatch(id -> problem.equipment().stream().map(Owned::id).anyMatch(id::equals));
  }
}
