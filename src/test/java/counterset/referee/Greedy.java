package counterset.referee;

import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

/**
 * A session to begin with: superset by superset, the full filling that can come next and is worth
 * most by itself, where a target that nothing trains yet counts more than any pairing.
 */
final class Greedy {

  private static final int NEW_TARGET = 50;

  private final Set<String> targets;
  private final BiPredicate<Exit, Entry> canFollow;
  private final Set<String> roots = new HashSet<>();

  /**
   * For one session.
   *
   * @param canFollow whether the rest is long enough for what comes after it
   */
  Greedy(Problem problem, BiPredicate<Exit, Entry> canFollow) {
    this.targets = problem.targets().stream().map(Target::muscle).collect(Collectors.toSet());
    this.canFollow = canFollow;
  }

  /** Exercises by superset; those after the last that could be filled are empty. */
  List<List<Exercise>> session(Collection<Layer> layers) {
    List<List<Exercise>> session = new ArrayList<>();
    Exit exit = Exit.BEFORE_ALL;
    for (Layer layer : layers) {
      Filling best = null;
      for (Filling filling : layer.fillings()) {
        if (filling.isFull()
            && canFollow.test(exit, filling.entry())
            && exercises(filling).stream().map(Exercise::root).noneMatch(roots::contains)
            && (best == null || worth(filling) > worth(best))) {
          best = filling;
        }
      }
      if (best == null) {
        break;
      }
      session.add(best.places().stream().map(Choice::exercise).toList());
      exercises(best)
          .forEach(
              exercise -> {
                roots.add(exercise.root());
                targets.removeAll(exercise.primary());
              });
      exit = best.exit();
    }
    return session;
  }

  private int worth(Filling filling) {
    Set<String> trained = new HashSet<>();
    exercises(filling).forEach(exercise -> trained.addAll(exercise.primary()));
    trained.retainAll(targets);
    return filling.points() + NEW_TARGET * trained.size();
  }

  private static List<Exercise> exercises(Filling filling) {
    return filling.occurrences().stream().map(Choice::exercise).toList();
  }
}
