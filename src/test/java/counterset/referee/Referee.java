package counterset.referee;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.referee.Verdict.Status;
import java.util.List;
import java.util.Objects;
import java.util.function.ToIntFunction;

/**
 * Finds the best session of a problem, or bounds it, with CP-SAT.
 *
 * <p>Two passes make the objective lexicographic: the first is about medium points alone, the
 * second about soft points among the sessions with as many medium ones as the first found.
 *
 * <p>Tracks are not judged: for a class the verdict is about its main session without any.
 */
public final class Referee {

  static {
    Loader.loadNativeLibraries();
  }

  /** More than the soft points of any session. */
  private static final long MEDIUM = 100_000;

  private final Catalogue catalogue;

  public Referee(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * Judges a problem over all main exercises that train one of its targets, and those it asks for.
   *
   * @throws IllegalArgumentException if it switches a rule off, or needs more than 63 items
   */
  public Verdict judge(Problem problem, Limits limits) {
    return judge(problem, new Rules(problem, catalogue).range(), List.of(), limits);
  }

  /**
   * Judges a problem over some exercises.
   *
   * @param exercises that may be used; those that break a rule are left out
   * @param hint a session to begin with, by superset and position, null for a hole; may be empty
   */
  public Verdict judge(
      Problem problem, List<Exercise> exercises, List<List<Exercise>> hint, Limits limits) {
    SessionModel model = new SessionModel(problem, catalogue, exercises, null);
    if (!hint.isEmpty()) {
      model.hint(hint);
    }
    Verdict verdict = judge(model, limits);
    if (verdict.status() != Status.FOUND) {
      return verdict;
    }
    // What is charged is bounded from below only: short of a proof it may be too high.
    Verdict exact = score(problem, verdict.places());
    return new Verdict(
        Status.FOUND,
        exact.medium(),
        verdict.mediumBound(),
        exact.soft(),
        verdict.softBound(),
        verdict.places(),
        verdict.size());
  }

  /**
   * Judges one session: infeasible if it breaks a rule, otherwise its points.
   *
   * @param places its exercises by superset and position, null for a hole; as many as fit the clock
   */
  public Verdict score(Problem problem, List<List<Exercise>> places) {
    List<Exercise> exercises =
        places.stream().flatMap(List::stream).filter(Objects::nonNull).distinct().toList();
    return judge(new SessionModel(problem, catalogue, exercises, places), new Limits(60, 1, true));
  }

  /**
   * Looks for a good session in one pass, in which a medium point is worth more than all soft ones.
   * Proves nothing that a verdict could tell.
   *
   * @param known a session to begin with, by superset and position; without one it makes its own
   */
  Verdict attempt(
      Problem problem, List<Exercise> exercises, List<List<Exercise>> known, Limits limits) {
    SessionModel model = new SessionModel(problem, catalogue, exercises, null);
    List<List<Exercise>> first = known.isEmpty() ? model.greedy() : known;
    model.hint(first);
    LinearExprBuilder both = LinearExpr.newBuilder();
    both.addTerm(model.medium(), MEDIUM);
    both.add(model.soft());
    model.cp().maximize(both.build());
    CpSolver solver = hasty(limits);
    CpSolverStatus status = solver.solve(model.cp());
    return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE
        ? found(problem, model.places(literal(solver)), model.size())
        : found(problem, first, model.size());
  }

  /**
   * Bounds the soft points of the sessions that have at least the medium points of a known one, and
   * looks for a better one. One pass over a model that may be large.
   *
   * @param known a session that breaks no rule
   * @param untilNanos when to end, by {@link System#nanoTime}; the search has a second at least
   */
  Verdict bound(
      Problem problem, List<Exercise> exercises, Verdict known, int workers, long untilNanos) {
    SessionModel model = new SessionModel(problem, catalogue, exercises, null);
    model.hint(known.places());
    model.cp().addGreaterOrEqual(model.medium(), known.medium());
    model.cp().maximize(model.soft());
    double seconds = Math.max(1, (untilNanos - System.nanoTime()) / 1e9);
    CpSolver solver = hasty(new Limits(seconds, workers, false));
    CpSolverStatus status = solver.solve(model.cp());
    Verdict best = known;
    if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE) {
      Verdict other = found(problem, model.places(literal(solver)), model.size());
      best = other.isBetterThan(known) ? other : known;
    }
    return new Verdict(
        status == CpSolverStatus.OPTIMAL && best.medium() == 0 ? Status.PROVEN : Status.FOUND,
        best.medium(),
        0,
        best.soft(),
        bound(solver, status),
        best.places(),
        model.size());
  }

  /** A session with its exact points: a solver may have charged too much. */
  private Verdict found(Problem problem, List<List<Exercise>> places, Verdict.Size size) {
    Verdict exact = score(problem, places);
    return exact.status() == Status.PROVEN
        ? new Verdict(
            Status.FOUND, exact.medium(), 0, exact.soft(), Verdict.UNBOUNDED, places, size)
        : Verdict.without(Status.UNKNOWN, size);
  }

  private static ToIntFunction<BoolVar> literal(CpSolver solver) {
    return decision -> solver.booleanValue(decision) ? 1 : 0;
  }

  /** For large models, whose presolve and full relaxation would take all the time that there is. */
  private static CpSolver hasty(Limits limits) {
    CpSolver solver = solver(limits);
    solver
        .getParameters()
        .setLinearizationLevel(1)
        .setMaxPresolveIterations(1)
        .setFindBigLinearOverlap(false)
        .setMergeAtMostOneWorkLimit(0)
        .setSymmetryLevel(0);
    return solver;
  }

  private static Verdict judge(SessionModel model, Limits limits) {
    model.cp().maximize(model.medium());
    CpSolver first = solver(limits);
    CpSolverStatus wishes = first.solve(model.cp());
    if (wishes == CpSolverStatus.INFEASIBLE) {
      return Verdict.without(Status.INFEASIBLE, model.size());
    }
    if (wishes != CpSolverStatus.OPTIMAL && wishes != CpSolverStatus.FEASIBLE) {
      return Verdict.without(Status.UNKNOWN, model.size());
    }
    long medium = Math.round(first.objectiveValue());
    long mediumBound = (long) Math.floor(first.bestObjectiveBound() + 1e-6);

    model.cp().addGreaterOrEqual(model.medium(), medium);
    model.cp().clearHints();
    for (BoolVar decision : model.decisions()) {
      model.cp().addHint(decision, first.booleanValue(decision));
    }
    model.cp().clearObjective();
    model.cp().maximize(model.soft());
    CpSolver second = solver(limits);
    CpSolverStatus points = second.solve(model.cp());
    boolean better = points == CpSolverStatus.OPTIMAL || points == CpSolverStatus.FEASIBLE;
    CpSolver best = better ? second : first;
    boolean proven = wishes == CpSolverStatus.OPTIMAL && points == CpSolverStatus.OPTIMAL;
    return new Verdict(
        proven ? Status.PROVEN : Status.FOUND,
        best.value(model.medium()),
        mediumBound,
        best.value(model.soft()),
        bound(second, points),
        model.places(decision -> best.booleanValue(decision) ? 1 : 0),
        model.size());
  }

  /** A solver that had no time to search says 0, which bounds nothing. */
  private static long bound(CpSolver solver, CpSolverStatus status) {
    boolean searched = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return searched ? (long) Math.floor(solver.bestObjectiveBound() + 1e-6) : Verdict.UNBOUNDED;
  }

  private static CpSolver solver(Limits limits) {
    CpSolver solver = new CpSolver();
    var parameters = solver.getParameters();
    parameters.setNumWorkers(limits.workers());
    parameters.setRandomSeed(1);
    // The flow is nearly integral by itself: a full relaxation proves two to three times sooner.
    parameters.setLinearizationLevel(2);
    // Probing the arcs takes twenty times as long as the search that it should help.
    parameters.setCpModelProbingLevel(0);
    if (limits.repeatable()) {
      parameters.setMaxDeterministicTime(limits.seconds());
      parameters.setInterleaveSearch(limits.workers() > 1);
    } else {
      parameters.setMaxTimeInSeconds(limits.seconds());
    }
    return solver;
  }
}
