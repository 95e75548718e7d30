package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.score.WeekFacts;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans the sessions of a week together, or scores a week that somebody else planned.
 *
 * <p>First the sessions are planned one after another; then all of them together, beginning with
 * that, so that the week is never worse.
 */
public final class WeekPlanner {

  private final Catalogue catalogue;
  private final String version;
  private volatile Runnable running = () -> {};
  private volatile boolean stopped;
  private long moves;

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
    moves = 0;
    List<Lineup> sessions = oneByOne(problem, limit);
    WeekFacts facts =
        new WeekFacts(problem, catalogue, sessions.stream().map(Lineup::facts).toList());
    Search search = new Search();
    runOrStop(search::stop);
    List<Lineup> week =
        search.best(start -> task(facts, sessions, start % 2 == 0), problem.seed(), limit.part(2));
    moves += search.moves();
    boolean complete = !search.isStopped();
    SolverNote note =
        new SolverNote(
            problem.seed(),
            limit.name(),
            version,
            complete && limit.isCounted() ? moves : 0,
            complete);
    return new WeekAssembly(problem, catalogue).plan(facts, week, note);
  }

  /**
   * All sessions together.
   *
   * @param begun whether with those planned one after another, else with nothing but what is kept
   */
  private static Task task(WeekFacts facts, List<Lineup> sessions, boolean begun) {
    List<Task.Day> days = new ArrayList<>();
    for (Lineup session : sessions) {
      Task.Day empty = Task.Day.empty(Casting.of(Lineup.empty(session.facts())));
      boolean from = begun || !empty.isMovable();
      days.add(from ? new Task.Day(session, empty.pinned()) : empty);
    }
    return new Task(days, Optional.of(facts), Optional.empty());
  }

  /** The sessions planned one after another, as line-ups of their own problems. */
  List<Lineup> oneByOne(WeekProblem problem, Limit limit) {
    OneByOne asked = new OneByOne(problem, catalogue);
    Lineup[] sessions = new Lineup[problem.sessions().size()];
    for (int session : asked.order()) {
      SessionFacts facts = facts(asked.problem(session));
      Search search = new Search();
      runOrStop(search::stop);
      Task task = Task.of(Task.Day.empty(Casting.of(Lineup.empty(facts))));
      Lineup found =
          search.best(task, facts.problem().seed(), limit.part(2 * sessions.length)).get(0);
      moves += search.moves();
      Session result = new Session(List.of(), found.supersets(), List.of(), found.modifications());
      asked.planned(session, result);
      sessions[session] = own(problem.sessions().get(session).problem(), found);
    }
    return List.of(sessions);
  }

  /** The same exercises in the same places, in the line-up of another problem. */
  private Lineup own(Problem problem, Lineup found) {
    Lineup own = Lineup.empty(facts(problem));
    for (int place = 0; place < own.places().length; place++) {
      own.places()[place] = same(own, found.places()[place]);
    }
    for (int standIn = 0; standIn < own.standIns().length; standIn++) {
      own.standIns()[standIn] = same(own, found.standIns()[standIn]);
    }
    return own;
  }

  private static Candidate same(Lineup own, Candidate candidate) {
    return candidate == null
        ? null
        : own.facts().candidate(candidate.exercise().id()).orElseThrow();
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
    List<Lineup> lineups = new ArrayList<>();
    for (WeekSession asked : problem.sessions()) {
      lineups.add(Scoring.lineup(asked.problem(), sessions.get(lineups.size()), catalogue));
    }
    WeekFacts facts =
        new WeekFacts(problem, catalogue, lineups.stream().map(Lineup::facts).toList());
    return new WeekAssembly(problem, catalogue).plan(facts, lineups, sessions, note);
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
