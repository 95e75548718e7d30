package counterset.solve;

import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import counterset.planning.Candidate;
import counterset.planning.ExerciseFilter;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.WeekFacts;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.moves.WeekMoves;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the sessions of a week together, or scores a week that somebody else planned.
 *
 * <p>First the sessions are planned one after another; then all of them together, beginning with
 * that, so that the week is never worse.
 */
public final class WeekPlanner {

  private static final int MILLIS = 1000;

  private final Catalogue catalogue;
  private final String version;
  private volatile Runnable running = () -> {};
  private volatile boolean stopped;

  /**
   * A planner.
   *
   * @param version of this program, for the notes in plans
   */
  public WeekPlanner(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * Plans a week. If nothing fits, its plans have no supersets or break rules, and its score says
   * so. Where places of a session are kept, they stay; a session of which all places are kept stays
   * as it is while the others are planned around it.
   *
   * @param limit of the search for the sessions one after another, and again of that for all
   *     together; a time limit is split between the two
   */
  public WeekPlan plan(WeekProblem problem, Limit limit) {
    List<SessionSolution> sessions = oneByOne(problem, limit);
    WeekSearch search =
        new WeekSearch(
            new WeekFacts(
                problem, catalogue, sessions.stream().map(SessionSolution::getFacts).toList()));
    runOrStop(search::stop);
    WeekSolution week = search.best(sessions, limit.starts(), together(limit));
    boolean complete = !search.isStopped();
    SolverNote note =
        new SolverNote(
            problem.seed(), limit.name(), version, complete ? tries(sessions, limit) : 0, complete);
    return new WeekAssembly(problem, catalogue).plan(week, note);
  }

  /** The sessions planned one after another, as solutions of their own problems. */
  List<SessionSolution> oneByOne(WeekProblem problem, Limit limit) {
    OneByOne asked = new OneByOne(problem, catalogue);
    SessionSolution[] sessions = new SessionSolution[problem.sessions().size()];
    for (int session : asked.order()) {
      SessionFacts facts = facts(asked.problem(session));
      Search search = new Search(facts, Scoring.weights(facts.problem()));
      runOrStop(search::stop);
      SessionSolution found = search.best(limit.starts(), oneOf(sessions.length, limit));
      Session result =
          new Session(
              List.of(),
              SessionSolutions.supersets(found),
              List.of(),
              SessionSolutions.modifications(found));
      asked.planned(session, result);
      sessions[session] = own(problem.sessions().get(session).problem(), found);
    }
    return List.of(sessions);
  }

  /** The same exercises in the same places, in the solution of another problem. */
  private SessionSolution own(Problem problem, SessionSolution found) {
    SessionSolution own = SessionSolutions.empty(facts(problem), Scoring.weights(problem));
    for (int i = 0; i < own.getPlaces().size(); i++) {
      own.getPlaces().get(i).setCandidate(same(own, found.getPlaces().get(i).getCandidate()));
    }
    for (int i = 0; i < own.getStandIns().size(); i++) {
      own.getStandIns().get(i).setCandidate(same(own, found.getStandIns().get(i).getCandidate()));
    }
    return own;
  }

  private static Candidate same(SessionSolution own, Candidate candidate) {
    return candidate == null
        ? null
        : own.getFacts().candidate(candidate.exercise().id()).orElseThrow();
  }

  private SessionFacts facts(Problem problem) {
    return new SessionFacts(
        problem,
        catalogue,
        new ExerciseFilter(problem, catalogue).main(),
        SessionLength.supersetsThatFit(problem.clock(), problem.minutes()));
  }

  private void runOrStop(Runnable stop) {
    running = stop;
    if (stopped) {
      stop.run();
    }
  }

  /** Half of a time limit is for the sessions one after another, half for all together. */
  private static TerminationConfig oneOf(int sessions, Limit limit) {
    return limit.seconds().isPresent()
        ? new TerminationConfig()
            .withMillisecondsSpentLimit(
                Math.max(1, (long) MILLIS * limit.seconds().getAsInt() / (2L * sessions)))
        : limit.termination();
  }

  private static TerminationConfig together(Limit limit) {
    return oneOf(1, limit);
  }

  private static long tries(List<SessionSolution> sessions, Limit limit) {
    if (limit.seconds().isPresent()) {
      return 0;
    }
    long alone =
        sessions.stream().mapToLong(session -> limit.tries(session.getFacts().supersets())).sum();
    return alone + (long) limit.starts() * limit.effort().walks() * WeekMoves.tries(sessions);
  }

  /**
   * Scores a week as it is, whatever it breaks.
   *
   * @param sessions in the order of the problem; the supersets of each have no more exercises than
   *     its clock has positions, and are numbered from 1 without a gap
   * @throws IllegalArgumentException if there are more or fewer sessions than in the problem
   */
  public WeekPlan score(WeekProblem problem, List<Session> sessions, SolverNote note) {
    if (sessions.size() != problem.sessions().size()) {
      throw new IllegalArgumentException(
          "The week has "
              + problem.sessions().size()
              + " sessions, and "
              + sessions.size()
              + " are to be scored.");
    }
    List<SessionSolution> solutions = new ArrayList<>();
    for (WeekSession asked : problem.sessions()) {
      solutions.add(Scoring.solution(asked.problem(), sessions.get(solutions.size()), catalogue));
    }
    WeekFacts facts =
        new WeekFacts(
            problem, catalogue, solutions.stream().map(SessionSolution::getFacts).toList());
    WeekSolution week = WeekSolutions.join(facts, solutions, Scoring.weights(problem));
    return new WeekAssembly(problem, catalogue).plan(week, sessions, note);
  }

  /**
   * Ends a week that is being planned soon, with the best found so far. May be called from any
   * thread.
   */
  public void stop() {
    stopped = true;
    running.run();
  }
}
