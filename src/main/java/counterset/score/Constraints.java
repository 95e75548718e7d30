package counterset.score;

import counterset.model.Match;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The list of the constraints. Its order is that of scores and explanations. */
public final class Constraints {

  /** Those of a session. */
  public static final List<PlanConstraint> OF_SESSIONS =
      List.of(
          new ExerciseRepeated(),
          new SidesSplit(),
          new EquipmentMissing(),
          new UnsafeForClient(),
          new ChangeoverTooLong(),
          new ClockOverrun(),
          new KeptMoved(),
          new AboveLevel(),
          new Excluded(),
          new ModificationMissing(),
          new TrackRepeated(),
          new TargetUncovered(),
          new PatternMissing(),
          new SupersetEmpty(),
          new EquipmentUnused(),
          new IncludeMissing(),
          new OffTarget(),
          new LastResort(),
          new Known(),
          new EasyWork(),
          new NotHard(),
          new Softer(),
          new PartialRange(),
          new EquipmentChange(),
          new ChangeoverSeconds(),
          new FloorTrip(),
          new FloorEarly(),
          new PairFit(),
          new SameMuscleInARow(),
          new UnevenVolume(),
          new LightBeforeHeavy(),
          new Twin(),
          new Crowded(),
          new PatternAgain(),
          new PairAgain(),
          new TurnOver(),
          new JointAgain(),
          new Unloaded(),
          new TooEasy(),
          new EquipShare(),
          new IsoSide(),
          new GripRun(),
          new BackRun(),
          new ShoulderRun(),
          new SameRoot(),
          new OpenSmall(),
          new HardFinish(),
          new OneSidedShare(),
          new OneSidedRun(),
          new UsedRecently(),
          new Likes(),
          new Dislikes(),
          new ModificationAwkward());

  /** Those between the sessions of a week. */
  public static final List<DayConstraint> OF_WEEKS =
      List.of(new WeekFrequency(), new RecoveryShort(), new WeeklyVolume(), new WeekRepeated());

  private static final Map<String, PlanConstraint> BY_ID = byId(OF_SESSIONS);
  private static final Map<String, DayConstraint> OF_WEEKS_BY_ID = byId(OF_WEEKS);

  private Constraints() {}

  private static <C extends Constraint> Map<String, C> byId(List<C> constraints) {
    return constraints.stream().collect(Collectors.toMap(Constraint::id, Function.identity()));
  }

  /** All, those of a session first. */
  public static List<Constraint> all() {
    return Stream.concat(OF_SESSIONS.stream(), OF_WEEKS.stream()).toList();
  }

  /** The ids of some, in their order. */
  public static Set<String> ids(List<? extends Constraint> constraints) {
    return constraints.stream()
        .map(Constraint::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The constraint that a match is of. */
  public static PlanConstraint of(Match match) {
    return of(match.constraint());
  }

  /**
   * The constraint of a session that has an id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static PlanConstraint of(String id) {
    return known(BY_ID, id);
  }

  /**
   * The constraint of a week that has an id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static DayConstraint ofWeek(String id) {
    return known(OF_WEEKS_BY_ID, id);
  }

  private static <C extends Constraint> C known(Map<String, C> constraints, String id) {
    C constraint = constraints.get(id);
    if (constraint == null) {
      throw new IllegalArgumentException("The constraint (" + id + ") is not known.");
    }
    return constraint;
  }

  /** Those of a session that have a scope, in order. */
  public static <C extends Constraint> List<C> of(Class<C> scope) {
    return OF_SESSIONS.stream().filter(scope::isInstance).map(scope::cast).toList();
  }

  /** One of a session. */
  public static <C extends Constraint> C the(Class<C> one) {
    return of(one).get(0);
  }

  /** One of a week. */
  static <C extends DayConstraint> C weekly(Class<C> one) {
    return OF_WEEKS.stream().filter(one::isInstance).map(one::cast).findFirst().orElseThrow();
  }
}
