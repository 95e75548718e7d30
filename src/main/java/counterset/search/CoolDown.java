package counterset.search;

import counterset.model.Exercise;
import counterset.model.Position;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Chooses stretches for the muscle groups with most sets. A hold takes 10 to 30 s: Garber 2011. */
final class CoolDown {

  private final Problem problem;
  private final List<Exercise> stretches;

  CoolDown(Problem problem, List<Exercise> stretches) {
    this.problem = problem;
    this.stretches = stretches;
  }

  /**
   * The stretches that fit the seconds of the cool-down.
   *
   * @param work the exercises of the supersets, in order
   */
  List<Exercise> after(List<Exercise> work) {
    List<Exercise> chosen = new ArrayList<>();
    if (work.isEmpty()) {
      return chosen;
    }
    boolean onTheFloor = work.get(work.size() - 1).position().isFloor();
    int left = problem.clock().coolDown();
    List<String> muscles = byHalfSets(work);
    int before;
    do {
      before = chosen.size();
      for (String muscle : muscles) {
        Optional<Exercise> stretch = stretch(muscle, chosen, before == 0, onTheFloor, left);
        if (stretch.isPresent()) {
          chosen.add(stretch.get());
          left -= stretch.get().seconds().orElse(0);
        }
      }
    } while (chosen.size() > before);
    // On the floor first if the session ends there, so that one gets up once.
    chosen.sort(
        Comparator.comparing((Exercise s) -> s.position().isFloor() != onTheFloor)
            .thenComparing(Exercise::position));
    return chosen;
  }

  /** The next stretch for a muscle group; in the first round none for a group that has one. */
  private Optional<Exercise> stretch(
      String muscle, List<Exercise> chosen, boolean firstRound, boolean onTheFloor, int left) {
    return stretches.stream()
        .filter(s -> s.primary().contains(muscle) && s.seconds().orElse(0) <= left)
        .filter(s -> !chosen.contains(s))
        .filter(
            s ->
                !firstRound || chosen.stream().noneMatch(other -> other.primary().contains(muscle)))
        .min(
            Comparator.comparing((Exercise s) -> isElsewhere(s.position(), onTheFloor))
                .thenComparing(s -> s.position() == Position.SEATED));
  }

  private static boolean isElsewhere(Position position, boolean onTheFloor) {
    return position.isFloor() != onTheFloor;
  }

  /** The muscle groups that worked, those with most sets first. */
  private static List<String> byHalfSets(List<Exercise> work) {
    Map<String, Integer> halves = new LinkedHashMap<>();
    for (Exercise exercise : work) {
      exercise.primary().forEach(muscle -> halves.merge(muscle, 2, Integer::sum));
      exercise.secondary().forEach(muscle -> halves.merge(muscle, 1, Integer::sum));
    }
    return halves.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .map(Map.Entry::getKey)
        .toList();
  }
}
