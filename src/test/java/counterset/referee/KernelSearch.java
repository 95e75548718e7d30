package counterset.referee;

import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.referee.Verdict.Status;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Finds good sessions where the whole model is too large: solves it again and again over a kernel
 * of a few exercises, those of the best session so far and a handful of the others, until each has
 * had its turn several times or the time is up. What it finds is a session of the whole problem;
 * what it proves is about the kernel alone and is not passed on.
 *
 * <p>After the kernel search of Angelelli, Mansini and Speranza (2010), cited from memory.
 */
final class KernelSearch {

  /** Ways to fill one superset on paper: as many exercises as that allows make a kernel. */
  private static final double WAYS = 2_000;

  private static final double FIRST_PASS_SECONDS = 3;
  private static final double LONGEST_PASS_SECONDS = 10;
  private static final double GROWTH = 1.2;
  private static final int SWEEPS_WITHOUT_GAIN = 2;

  private final Referee referee;
  private final Problem problem;
  private final List<Exercise> exercises;
  private final Set<Exercise> wanted = new LinkedHashSet<>();
  private final Random random = new Random(1);
  private final int workers;
  private double pass = FIRST_PASS_SECONDS;
  private Optional<Verdict> best = Optional.empty();

  /**
   * A search over some exercises.
   *
   * @param exercises that may be used
   */
  KernelSearch(
      Referee referee, Problem problem, List<Exercise> exercises, Rules rules, int workers) {
    this.referee = referee;
    this.problem = problem;
    this.exercises = exercises.stream().filter(rules::allow).toList();
    this.exercises.stream().filter(rules::isWanted).forEach(wanted::add);
    this.workers = workers;
  }

  /** The best session found; empty if there was none in time. */
  Optional<Verdict> run(long untilNanos) {
    // If the kernel holds them all, every sweep is the same, and the whole model is as good.
    boolean whole = exercises.size() <= kernelSize();
    int idle = 0;
    while (idle < SWEEPS_WITHOUT_GAIN && left(untilNanos) > 0 && !(whole && best.isPresent())) {
      boolean gained = sweep(untilNanos);
      idle = gained || best.isEmpty() ? 0 : idle + 1;
    }
    return best;
  }

  /** Gives every exercise a turn; whether that led to a better session. */
  private boolean sweep(long untilNanos) {
    boolean gained = false;
    List<Exercise> waiting = new ArrayList<>(exercises);
    Collections.shuffle(waiting, random);
    while (!waiting.isEmpty() && left(untilNanos) > 0) {
      Set<Exercise> kernel = new LinkedHashSet<>(wanted);
      best.ifPresent(
          found ->
              found.places().stream()
                  .flatMap(List::stream)
                  .filter(Objects::nonNull)
                  .forEach(kernel::add));
      waiting.removeAll(kernel);
      int size = Math.max(kernelSize(), kernel.size() + 2);
      List<Exercise> turn =
          waiting.subList(0, Math.max(0, Math.min(waiting.size(), size - kernel.size())));
      kernel.addAll(turn);
      turn.clear();
      gained |= solve(kernel, untilNanos);
    }
    return gained;
  }

  private int kernelSize() {
    return (int) Math.pow(WAYS, 1.0 / problem.clock().perSuperset());
  }

  private boolean solve(Set<Exercise> kernel, long untilNanos) {
    Limits limits = new Limits(Math.min(pass, left(untilNanos) + 0.1), workers, false);
    List<Exercise> inOrder = exercises.stream().filter(kernel::contains).toList();
    Verdict found =
        referee.attempt(problem, inOrder, best.map(Verdict::places).orElse(List.of()), limits);
    boolean better = found.status() == Status.FOUND && best.map(found::isBetterThan).orElse(true);
    if (!better && pass < LONGEST_PASS_SECONDS) {
      pass *= GROWTH; // This problem, or this machine, may need longer.
    }
    if (better) {
      best = Optional.of(found);
    }
    return better;
  }

  private static double left(long untilNanos) {
    return Math.max(0, (untilNanos - System.nanoTime()) / 1e9);
  }
}
