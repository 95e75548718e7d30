package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.referee.Verdict.Status;
import counterset.score.ExerciseFilter;
import java.util.List;
import java.util.Optional;

/**
 * Judges problems over a whole catalogue: an incumbent and a bound, seldom a proof. For the
 * benchmark; too slow for the build.
 *
 * <p>Half of the time goes to a {@link KernelSearch}, which knows nothing of what the program
 * finds, the other half to the whole model for a bound and perhaps a better session. A model that
 * is too large to be built in that time is left out; then there is an incumbent only.
 */
public final class FullSizeReferee {

  /** Ways to fill the supersets on paper up to which the whole model is built. */
  private static final double LARGEST = 1_000_000;

  private static final int WORKERS = 2;
  private static final double KERNEL_SHARE = 0.5;

  private final Catalogue catalogue;
  private final Referee referee;

  public FullSizeReferee(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.referee = new Referee(catalogue);
  }

  /**
   * What the referee says of one problem, without a hint from the program.
   *
   * @param seconds that this took, models and all
   */
  public record Judged(Verdict verdict, double seconds) {

    /** Whether there is a session to compare with. */
    public boolean hasSession() {
      return verdict.status() == Status.FOUND || verdict.status() == Status.PROVEN;
    }

    /** Whether there is a bound, for sessions with as many medium points. */
    public boolean isBounded() {
      return hasSession() && verdict.softBound() != Verdict.UNBOUNDED;
    }
  }

  /**
   * Judges a problem with two workers; its tracks are ignored.
   *
   * @param seconds for everything; building a model can make it a little longer
   */
  public Judged judge(Problem problem, double seconds) {
    long start = System.nanoTime();
    List<Exercise> exercises = new ExerciseFilter(problem, catalogue).main();
    Rules rules = new Rules(problem, catalogue);
    Optional<Verdict> found =
        new KernelSearch(referee, problem, exercises, rules, WORKERS)
            .run(start + nanos(KERNEL_SHARE * seconds));
    Verdict verdict =
        found.orElseGet(
            () -> Verdict.without(Status.UNKNOWN, new Verdict.Size(exercises.size(), 0, 0, 0)));
    long allowed = exercises.stream().filter(rules::allow).count();
    if (found.isPresent() && ways(problem, allowed) <= LARGEST) {
      verdict = referee.bound(problem, exercises, verdict, WORKERS, start + nanos(seconds));
    }
    return new Judged(verdict, (System.nanoTime() - start) / 1e9);
  }

  private static double ways(Problem problem, long exercises) {
    return SessionModel.supersetsThatFit(problem)
        * Math.pow(exercises, problem.clock().perSuperset());
  }

  private static long nanos(double seconds) {
    return (long) (seconds * 1e9);
  }
}
