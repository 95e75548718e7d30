package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.EquipmentUnused;
import counterset.score.ExerciseFilter;
import counterset.score.IncludeMissing;
import counterset.score.SupersetEmpty;
import counterset.score.TargetNeeds;
import counterset.score.TargetUncovered;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What can be said of a problem without solving it: a lower bound of what every session of it
 * breaks. Changes that leave this bound too high need not be tried.
 */
final class Outlook {

  private final Problem problem;
  private final Catalogue catalogue;
  private final int supersets;
  private final Wishes wishes;
  private final List<Exercise> pool = new ArrayList<>();

  Outlook(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.supersets = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    this.wishes = new Wishes(problem, catalogue);
    List<String> wanted =
        Stream.concat(problem.keep().stream().map(Keep::exercise), problem.include().stream())
            .toList();
    ExerciseFilter filter = new ExerciseFilter(problem, catalogue);
    for (Exercise exercise : wishes.allowed()) {
      if (wanted.contains(exercise.id()) || filter.isAskedFor(exercise)) {
        pool.add(exercise);
      }
    }
  }

  Wishes wishes() {
    return wishes;
  }

  int supersets() {
    return supersets;
  }

  /** The places that the clock has room for. */
  int places() {
    return supersets * problem.clock().perSuperset();
  }

  /** What no wish rules out and what trains a target or is asked for by name. */
  List<Exercise> pool() {
    return Collections.unmodifiableList(pool);
  }

  /** Reasons, at least, why no session of this problem can be handed out; 0 if none is known. */
  int hardShortfall() {
    int kept = (int) problem.keep().stream().filter(keep -> !stands(keep)).count();
    return kept + (supersets == 0 || pool.isEmpty() ? 1 : 0);
  }

  /** Whether a kept exercise may be done at all and has its place within the clock. */
  boolean stands(Keep keep) {
    return keep.at().superset() <= supersets
        && wishes.allow(catalogue.exercises().get(keep.exercise()));
  }

  /** Medium points, at least, that every session of this problem loses. */
  int mediumShortfall() {
    int alone = problem.targets().stream().mapToInt(this::missing).sum();
    return weight(TargetUncovered.class) * Math.max(alone, missingForRoom())
        + weight(EquipmentUnused.class) * unused().size()
        + weight(IncludeMissing.class) * unwelcome().size()
        + weight(SupersetEmpty.class) * Math.max(0, supersets - fillable());
  }

  private <C extends Constraint> int weight(Class<C> constraint) {
    return Constraints.the(constraint).weight(problem.weights());
  }

  /** Sets that a target must be short of, since too few different exercises train it. */
  int missing(Target target) {
    if (!TargetNeeds.isDirect(problem, catalogue, target)) {
      return 0;
    }
    int most = problem.clock().rounds() * trained(target.muscle());
    return Math.max(0, target.minSets() - most);
  }

  /** How many different exercises there are for a muscle group. */
  int trained(String muscle) {
    return (int)
        pool.stream()
            .filter(exercise -> exercise.primary().contains(muscle))
            .map(Exercise::root)
            .distinct()
            .count();
  }

  /** Sets that must be missing since the places are too few, however well they are used. */
  private int missingForRoom() {
    Map<String, Integer> best = new LinkedHashMap<>();
    pool.forEach(exercise -> best.merge(exercise.root(), targets(exercise), Math::max));
    int held =
        best.values().stream()
            .sorted(Collections.reverseOrder())
            .limit(places())
            .mapToInt(targets -> targets * problem.clock().rounds())
            .sum();
    int asked =
        problem.targets().stream()
            .filter(target -> TargetNeeds.isDirect(problem, catalogue, target))
            .mapToInt(Target::minSets)
            .sum();
    return Math.max(0, asked - held);
  }

  /** Equipment that no exercise of this problem uses. */
  List<Owned> unused() {
    return problem.equipment().stream()
        .filter(owned -> pool.stream().noneMatch(e -> Wishes.uses(e, owned, catalogue)))
        .toList();
  }

  /** Exercises asked for that another wish rules out. */
  List<String> unwelcome() {
    return problem.include().stream()
        .filter(id -> !wishes.allow(catalogue.exercises().get(id)))
        .toList();
  }

  /** The most supersets that can be filled without doing anything twice. */
  int fillable() {
    long both = pool.stream().filter(e -> !e.isUnilateral()).map(Exercise::root).distinct().count();
    long oneSided =
        pool.stream().filter(Exercise::isUnilateral).map(Exercise::root).distinct().count();
    int positions = problem.clock().perSuperset();
    return (int) (both / positions + (positions == 2 ? oneSided : 0));
  }

  private int targets(Exercise exercise) {
    return (int)
        problem.targets().stream().filter(t -> exercise.primary().contains(t.muscle())).count();
  }
}
