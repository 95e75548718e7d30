package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses warm-up moves: gentle to brisk, every target's region among them, the last one a
 * rehearsal of superset 1.
 *
 * <p>Exercise-specific warm-up for short sessions: Iversen 2021.
 */
final class WarmUp {

  private final Problem problem;
  private final Catalogue catalogue;
  private final List<Exercise> moves;

  WarmUp(Problem problem, Catalogue catalogue, List<Exercise> moves) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.moves = moves;
  }

  /**
   * The moves that fit the seconds of the warm-up.
   *
   * @param work the exercises of the supersets, in order
   */
  List<Exercise> before(List<Exercise> work) {
    Optional<Exercise> rehearsal = rehearsal(work);
    List<Exercise> chosen = new ArrayList<>();
    int left = problem.clock().warmUp() - rehearsal.map(WarmUp::seconds).orElse(0);
    Optional<Exercise> next = best(work, chosen, rehearsal, left);
    while (next.isPresent()) {
      chosen.add(next.get());
      left -= seconds(next.get());
      next = best(work, chosen, rehearsal, left);
    }
    chosen.sort(
        Comparator.comparingInt(Exercise::intensity)
            .thenComparing(move -> !move.pattern().equals("march")));
    rehearsal.ifPresent(chosen::add);
    return chosen;
  }

  private Optional<Exercise> rehearsal(List<Exercise> work) {
    return work.stream()
        .limit(problem.clock().perSuperset())
        .flatMap(
            exercise -> moves.stream().filter(move -> move.pattern().equals(exercise.pattern())))
        .filter(move -> seconds(move) <= problem.clock().warmUp())
        .findFirst();
  }

  private Optional<Exercise> best(
      List<Exercise> work, List<Exercise> chosen, Optional<Exercise> rehearsal, int left) {
    List<Exercise> before = new ArrayList<>(chosen);
    rehearsal.ifPresent(before::add);
    return moves.stream()
        .filter(
            move ->
                seconds(move) <= left && before.stream().noneMatch(other -> isAlike(other, move)))
        .max(Comparator.comparingInt(move -> worth(move, before, work)));
  }

  private static boolean isAlike(Exercise one, Exercise other) {
    return one.root().equals(other.root()) || one.family().equals(other.family());
  }

  /**
   * A region not yet moved counts most, then muscle groups that will work and are not yet moved,
   * then staying on one's feet.
   */
  private int worth(Exercise move, List<Exercise> before, List<Exercise> work) {
    Set<Region> targets =
        regions(problem.targets().stream().map(Target::muscle).collect(Collectors.toSet()));
    before.forEach(other -> targets.removeAll(regions(other.primary())));
    boolean newRegion = regions(move.primary()).stream().anyMatch(targets::contains);
    long newMuscles =
        move.primary().stream()
            .filter(
                muscle -> work.stream().anyMatch(exercise -> exercise.primary().contains(muscle)))
            .filter(muscle -> before.stream().noneMatch(other -> other.primary().contains(muscle)))
            .count();
    boolean newPattern = before.stream().noneMatch(other -> other.pattern().equals(move.pattern()));
    boolean down = move.position().isFloor() || move.position() == Position.SEATED;
    return (newRegion ? 100 : 0) + 10 * (int) newMuscles + (newPattern ? 5 : 0) - (down ? 15 : 0);
  }

  private Set<Region> regions(Set<String> muscles) {
    return muscles.stream()
        .map(muscle -> catalogue.muscles().get(muscle).region())
        .collect(Collectors.toSet());
  }

  private static int seconds(Exercise move) {
    return move.seconds().orElse(0);
  }
}
