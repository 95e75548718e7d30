package counterset.score;

import counterset.model.Catalogue;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.MovementPattern;
import counterset.model.MovementPattern.Group;
import counterset.model.Need;
import counterset.model.Position;
import counterset.model.Problem;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Works out what each exercise is worth to a client. Rules and numbers are common practice, no
 * source.
 */
final class Merits {

  // Effort in tenths of an intensity.
  private static final int WORKING = 15;
  private static final int HARD = 26;
  private static final int LIGHT_BUT_LOADED = 17;
  private static final int LIGHT_STAPLE = 15;
  private static final int FOR_BEGINNERS = 5;
  private static final int WITH_LIMITATION = 5;
  private static final int FOR_THE_SKILLED = -3;
  private static final int BENEATH_THE_SKILLED = -5;
  private static final int LAST_RESORT = -3;
  private static final int AT_THE_WALL = -8;
  private static final int CLEARLY_HARDER = 5;

  private static final int SKILLED = 3;
  private static final String PARTIAL = "partial-range";
  private static final String GRIP = "grip-heavy";
  private static final String BENT_OVER = "loaded-forward-bend";
  private static final Set<String> BACK_FAMILIES = Set.of("bent-over-row", "swing");
  private static final Set<String> BACK_PATTERNS = Set.of("hinge", "trunk-extension");
  private static final Set<String> WORKING_STAPLES = Set.of("rear-shoulder", "calf");

  private final Problem problem;
  private final Catalogue catalogue;
  private final Loads loads;
  private final Patterns patterns;
  private final Map<String, Integer> effort = new HashMap<>();
  private final Set<Integer> loadedPatterns = new HashSet<>();
  private final Set<String> loadedFamilies = new HashSet<>();
  private final Map<String, List<Exercise>> suitableByFamily;

  /**
   * Looks at exercises.
   *
   * @param suits whether nothing speaks against one in this session
   */
  Merits(
      Problem problem,
      Catalogue catalogue,
      Loads loads,
      Patterns patterns,
      Collection<Exercise> exercises,
      Predicate<Exercise> suits) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.loads = loads;
    this.patterns = patterns;
    exercises.forEach(exercise -> effort.put(exercise.id(), effort(exercise)));
    List<Exercise> suitable = exercises.stream().filter(suits).toList();
    suitable.stream()
        .filter(exercise -> loads.areUsedIn(exercise) && exercise.standing() > 1)
        .filter(exercise -> effort.get(exercise.id()) >= WORKING)
        .forEach(
            exercise -> {
              loadedPatterns.add(patterns.of(exercise));
              loadedFamilies.add(exercise.family());
            });
    suitableByFamily = suitable.stream().collect(Collectors.groupingBy(Exercise::family));
  }

  Merit of(Exercise exercise) {
    int hardness = effort.get(exercise.id());
    EffortClass own =
        hardness >= HARD
            ? EffortClass.HARD
            : hardness >= WORKING ? EffortClass.WORKING : EffortClass.EASY;
    return new Merit(
        patterns.of(exercise),
        exercise.standing(),
        own,
        tier(exercise, own),
        exercise.position().isFloor() && !patterns.isForUpperBody(),
        isOffTarget(exercise),
        unloaded(exercise, own),
        suitableByFamily.getOrDefault(exercise.family(), List.of()).stream()
            .mapToInt(it -> harder(it, exercise))
            .max()
            .orElse(0),
        exercise.traits().contains(PARTIAL)
            && problem.limitations().isEmpty()
            && problem.level() > 1,
        problem.level() == SKILLED && own != EffortClass.HARD,
        fatigue(exercise));
  }

  private int effort(Exercise exercise) {
    boolean loaded = isLoaded(exercise);
    int tenths = 10 * exercise.intensity();
    if (exercise.intensity() == 1 && exercise.standing() > 1) {
      tenths = loaded ? LIGHT_BUT_LOADED : isWorkingStaple(exercise) ? LIGHT_STAPLE : tenths;
    }
    if (problem.level() == 1) {
      tenths += FOR_BEGINNERS;
    }
    if (problem.level() == SKILLED && !loaded) {
      tenths += FOR_THE_SKILLED;
    }
    if (problem.level() == SKILLED && exercise.level() == 1 && !isMainLift(exercise)) {
      tenths += BENEATH_THE_SKILLED;
    }
    if (problem.level() == SKILLED && !exercise.multiJoint() && group(exercise).isLegs()) {
      tenths += FOR_THE_SKILLED;
    }
    if (!problem.limitations().isEmpty()) {
      tenths += WITH_LIMITATION;
    } else if (problem.level() > 1 && exercise.position() == Position.WALL) {
      tenths += AT_THE_WALL;
    }
    return tenths + (exercise.standing() == Exercise.LAST_RESORT ? LAST_RESORT : 0);
  }

  /** What opens sessions is lifted at every level; only the load changes. */
  private boolean isMainLift(Exercise exercise) {
    return exercise.multiJoint()
        && isLoaded(exercise)
        && pattern(exercise).filter(MovementPattern::opens).isPresent();
  }

  private boolean isWorkingStaple(Exercise exercise) {
    int least = loads.isEmpty() ? Exercise.KNOWN : Exercise.STAPLE;
    return exercise.standing() >= least
        && (group(exercise) == Group.TRUNK || WORKING_STAPLES.contains(patternId(exercise)));
  }

  private Group group(Exercise exercise) {
    return pattern(exercise).map(MovementPattern::group).orElse(Group.CONDITIONING);
  }

  private Optional<MovementPattern> pattern(Exercise exercise) {
    return patterns.kind(patterns.of(exercise));
  }

  private String patternId(Exercise exercise) {
    return patterns.id(patterns.of(exercise));
  }

  /** Whether it is made heavier by what is held or worn; a dumbbell to lean on is none. */
  boolean isLoaded(Exercise exercise) {
    return exercise.needs().stream().anyMatch(this::isLoad);
  }

  private boolean isLoad(Need need) {
    EquipmentKind kind = catalogue.equipment().get(need.equipment()).kind();
    boolean weight = Set.of("dumbbell", "kettlebell").contains(need.equipment());
    return (kind == EquipmentKind.HELD || kind == EquipmentKind.WORN)
        && (need.load().isPresent() || !weight);
  }

  private int tier(Exercise exercise, EffortClass own) {
    boolean big = pattern(exercise).filter(MovementPattern::big).isPresent();
    if (group(exercise) == Group.POWER) {
      return Merit.HARD_WORK;
    }
    if (big && exercise.multiJoint() && own == EffortClass.HARD) {
      boolean lifts = loads.isEmpty() || isLoaded(exercise);
      return exercise.isUnilateral() || !lifts ? Merit.HARD_WORK : Merit.BIG_LIFT;
    }
    return own == EffortClass.EASY ? 0 : exercise.multiJoint() ? 2 : 1;
  }

  /**
   * What is hard without a load is left alone unless its own movement can be loaded; so is trunk
   * work. Push-ups are staples beside what is lifted.
   */
  private int unloaded(Exercise exercise, EffortClass own) {
    return group(exercise) == Group.TRUNK || !couldBeLoaded(exercise, own)
        ? 0
        : isPressOfTheBody(exercise, own) ? 1 : 2;
  }

  private boolean couldBeLoaded(Exercise exercise, EffortClass own) {
    return !loads.areUsedIn(exercise)
        && (own == EffortClass.HARD
            ? loadedFamilies.contains(exercise.family())
            : loadedPatterns.contains(patterns.of(exercise)));
  }

  private boolean isPressOfTheBody(Exercise exercise, EffortClass own) {
    return group(exercise) == Group.PUSH
        && exercise.multiJoint()
        && exercise.standing() == Exercise.STAPLE
        && own != EffortClass.EASY;
  }

  private boolean isOffTarget(Exercise exercise) {
    boolean aside =
        problem.include().contains(exercise.id())
            || problem.keep().stream().anyMatch(keep -> keep.exercise().equals(exercise.id()));
    boolean trains = patterns.wanted().isTrainedBy(exercise);
    return !aside && (!trains || isPlainConditioning(exercise) || isUnaskedPower(exercise));
  }

  /** Jumps are for those who have nothing to lift: for the whole body, or for the skilled. */
  private boolean isUnaskedPower(Exercise exercise) {
    return group(exercise) == Group.POWER
        && !isLoaded(exercise)
        && !(loads.isEmpty() && (patterns.isWhole() || problem.level() == SKILLED));
  }

  /** Punches and marches count as work only where a limitation narrows the choice. */
  private boolean isPlainConditioning(Exercise exercise) {
    return problem.limitations().isEmpty()
        && pattern(exercise).filter(it -> it.group() == Group.CONDITIONING).isPresent()
        && !patterns.isShared(patternId(exercise));
  }

  /** 0 if another version is not harder, 1 if it is, 2 if it is for the client's bench. */
  private int harder(Exercise other, Exercise exercise) {
    if (other.isUnilateral() != exercise.isUnilateral()) {
      return 0;
    }
    if (isOnBench(other) && exercise.position().isFloor()) {
      return 2;
    }
    boolean harder = effort.get(other.id()) >= effort.get(exercise.id()) + CLEARLY_HARDER;
    return harder && other.standing() >= exercise.standing() ? 1 : 0;
  }

  /** Who has a bench lies on it, not on the floor, for a full range. */
  private static boolean isOnBench(Exercise exercise) {
    return exercise.position() == Position.BENCH;
  }

  private int fatigue(Exercise exercise) {
    List<Position> onHands = List.of(Position.PRONE, Position.QUADRUPED);
    boolean grip = exercise.traits().contains(GRIP);
    boolean back =
        BACK_FAMILIES.contains(exercise.family())
            || BACK_PATTERNS.contains(patternId(exercise))
            || exercise.traits().contains(BENT_OVER);
    boolean shoulder =
        group(exercise) == Group.PUSH
            || onHands.contains(exercise.position())
                && exercise.demandOn(Joint.WRIST) >= Candidates.STRAIN;
    return (grip ? Fatigue.GRIP.bit() : 0)
        | (back ? Fatigue.BACK.bit() : 0)
        | (shoulder ? Fatigue.SHOULDER.bit() : 0);
  }
}
