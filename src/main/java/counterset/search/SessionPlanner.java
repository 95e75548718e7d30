package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.score.ExerciseFilter;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.timeline.SessionLength;

/** Plans one session, or scores one that somebody else planned. */
public final class SessionPlanner {

  private final Catalogue catalogue;
  private final String version;
  private final int mostThreads;
  private volatile Search search;
  private volatile boolean stopped;

  /**
   * A planner.
   *
   * @param version of this program, for the notes in plans
   */
  public SessionPlanner(Catalogue catalogue, String version) {
    this(catalogue, version, Runtime.getRuntime().availableProcessors());
  }

  /**
   * A planner beside others.
   *
   * @param mostThreads how many searches may run at once, at least 1; it changes nothing but the
   *     time
   */
  public SessionPlanner(Catalogue catalogue, String version, int mostThreads) {
    this.mostThreads = mostThreads;
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * Plans a session. If nothing fits, the plan has no supersets or breaks rules, and its score says
   * so.
   */
  public Plan plan(Problem problem, Limit limit) {
    int supersets = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    SessionFacts facts =
        new SessionFacts(
            problem, catalogue, new ExerciseFilter(problem, catalogue).main(), supersets);
    Search current = new Search(mostThreads);
    search = current;
    if (stopped) {
      current.stop();
    }
    Task task = Task.of(Task.Day.empty(Casting.of(Lineup.empty(facts)))).inMood(problem.seed());
    Lineup lineup = current.best(task, problem.seed(), limit).get(0);
    Session session =
        new Surroundings(problem, catalogue).around(lineup.supersets(), lineup.modifications());
    boolean complete = !current.isStopped();
    SolverNote note =
        new SolverNote(
            problem.seed(),
            limit.name(),
            version,
            complete && limit.isCounted() ? current.moves() : 0,
            complete);
    return new Assembly(problem, catalogue).plan(session, lineup, note);
  }

  /**
   * Ends a plan that is being made soon, with the best found so far. May be called from any thread.
   */
  public void stop() {
    stopped = true;
    Search current = search;
    if (current != null) {
      current.stop();
    }
  }

  /**
   * Scores a session as it is, whatever it breaks.
   *
   * @param session whose supersets have no more exercises than the clock has positions, numbered
   *     from 1 without a gap
   */
  public Plan score(Problem problem, Session session, SolverNote note) {
    return new Assembly(problem, catalogue)
        .plan(session, Scoring.lineup(problem, session, catalogue), note);
  }
}
