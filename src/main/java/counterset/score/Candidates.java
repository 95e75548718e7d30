package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Works out what a problem makes of each exercise. */
final class Candidates {

  /** The demand from which on a joint counts as strained. */
  static final int STRAIN = 2;

  private static final int SKILLED = 3;

  private final Problem problem;
  private final Catalogue catalogue;
  private final Kit kit;
  private final Recency recency;
  private final Loads loads;
  private final Map<String, Integer> muscles = new HashMap<>();
  private final Map<String, Integer> roots = new HashMap<>();
  private final Map<String, Integer> families = new HashMap<>();
  private final List<String> included;
  private final Patterns patterns;
  private Merits merits;

  Candidates(Problem problem, Catalogue catalogue, Kit kit, Patterns patterns) {
    this.patterns = patterns;
    this.problem = problem;
    this.catalogue = catalogue;
    this.kit = kit;
    this.recency = new Recency(problem, catalogue);
    this.loads = new Loads(problem, catalogue);
    this.included = List.copyOf(problem.include());
    catalogue.muscles().keySet().forEach(muscle -> muscles.put(muscle, muscles.size()));
  }

  List<Candidate> compile(Collection<Exercise> exercises) {
    merits = new Merits(problem, catalogue, loads, patterns, exercises, this::suits);
    List<Candidate> candidates = new ArrayList<>();
    for (Exercise exercise : exercises) {
      candidates.add(compile(candidates.size(), exercise));
    }
    return List.copyOf(candidates);
  }

  private Candidate compile(int index, Exercise exercise) {
    int wish = included.indexOf(exercise.id());
    return new Candidate(
        index,
        exercise,
        kit.of(exercise),
        exercise.isUnilateral(),
        exercise.position().isFloor(),
        exercise.intensity(),
        exercise.primary().stream()
            .mapToLong(muscle -> 1L << muscles.get(muscle))
            .reduce(0, (a, b) -> a | b),
        strained(exercise),
        roots.computeIfAbsent(exercise.root(), root -> roots.size()),
        families.computeIfAbsent(exercise.family(), family -> families.size()),
        problem.targets().stream().mapToInt(target -> halfSets(exercise, target)).toArray(),
        unsafe(exercise),
        missing(exercise),
        exercise.level() > problem.level(),
        Problem.names(problem.exclude(), exercise),
        merits.isLoaded(exercise) && problem.level() < SKILLED
            ? 0
            : Math.max(0, problem.level() - exercise.level()),
        loads.areUsedIn(exercise),
        uses(exercise),
        wish < 0 ? 0 : 1L << wish,
        recency.points(exercise),
        Problem.names(problem.likes(), exercise),
        Problem.names(problem.dislikes(), exercise),
        unsuitedTracks(exercise),
        merits.of(exercise));
  }

  private long unsuitedTracks(Exercise exercise) {
    long bits = 0;
    for (int track = 0; track < problem.tracks().size(); track++) {
      boolean suits =
          problem.tracks().get(track).stream()
              .allMatch(id -> catalogue.limitations().get(id).allows(exercise));
      bits |= suits ? 0 : 1L << track;
    }
    return bits;
  }

  private int unsafe(Exercise exercise) {
    return (int)
        problem.limitations().stream()
            .filter(id -> !catalogue.limitations().get(id).allows(exercise))
            .count();
  }

  private int missing(Exercise exercise) {
    return (int)
        exercise.needs().stream()
            .filter(need -> !ExerciseFilter.isServed(need, problem, catalogue))
            .count();
  }

  private boolean suits(Exercise exercise) {
    return unsafe(exercise) == 0
        && missing(exercise) == 0
        && exercise.level() <= problem.level()
        && !Problem.names(problem.exclude(), exercise)
        && (!exercise.isUnilateral() || problem.clock().perSuperset() == 2);
  }

  private static int strained(Exercise exercise) {
    int bits = 0;
    for (Joint joint : Joint.values()) {
      bits |= exercise.demandOn(joint) >= STRAIN ? 1 << joint.ordinal() : 0;
    }
    return bits;
  }

  private static int halfSets(Exercise exercise, Target target) {
    if (exercise.primary().contains(target.muscle())) {
      return 2;
    }
    return exercise.secondary().contains(target.muscle()) ? 1 : 0;
  }

  private static boolean isNeeded(Exercise exercise, Owned owned) {
    return exercise.needs().stream().anyMatch(need -> need.equipment().equals(owned.id()));
  }

  private long uses(Exercise exercise) {
    long bits = 0;
    for (int i = 0; i < problem.equipment().size(); i++) {
      Owned owned = problem.equipment().get(i);
      Equipment equipment = catalogue.equipment().get(owned.id());
      boolean used =
          isNeeded(exercise, owned) || equipment.comfortIn().contains(exercise.position());
      bits |= used ? 1L << i : 0;
    }
    return bits;
  }
}
