package counterset.bench;

import counterset.model.Problem;
import java.util.List;
import java.util.Set;

/** A problem with a few things changed. */
final class Reshaped {

  private Reshaped() {}

  static Problem withoutTracks(Problem problem) {
    return changed(problem, problem.minutes(), List.of());
  }

  static Problem withMinutes(Problem problem, int minutes) {
    return changed(problem, minutes, problem.tracks());
  }

  private static Problem changed(Problem problem, int minutes, List<Set<String>> tracks) {
    return new Problem(
        problem.title(),
        minutes,
        problem.clock(),
        problem.targets(),
        problem.equipment(),
        problem.limitations(),
        tracks,
        problem.level(),
        problem.pairing(),
        problem.include(),
        problem.exclude(),
        problem.keep(),
        problem.likes(),
        problem.dislikes(),
        problem.recent(),
        problem.date(),
        problem.weights(),
        problem.seed());
  }
}
