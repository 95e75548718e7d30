package counterset.score;

import counterset.model.Match;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The list of the constraints. Its order is that of scores and explanations. */
public final class Constraints {

  /** Those of a session. */
  public static final List<Constraint> OF_SESSIONS =
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
          new SupersetEmpty(),
          new EquipmentUnused(),
          new IncludeMissing(),
          new EquipmentChange(),
          new ChangeoverSeconds(),
          new FloorTrip(),
          new OpposingPair(),
          new SameMuscleInARow(),
          new UnevenVolume(),
          new MainLiftMissing(),
          new LightBeforeHeavy(),
          new FamilyAgain(),
          new JointAgain(),
          new Unloaded(),
          new TooEasy(),
          new TooLight(),
          new OneSidedShare(),
          new UsedRecently(),
          new Likes(),
          new Dislikes(),
          new ModificationAwkward());

  /** Those between the sessions of a week. */
  public static final List<DayConstraint> OF_WEEKS =
      List.of(new WeekFrequency(), new RecoveryShort(), new WeeklyVolume(), new WeekRepeated());

  private static final Map<String, Constraint> BY_ID =
      Stream.concat(OF_SESSIONS.stream(), OF_WEEKS.stream())
          .collect(Collectors.toMap(Constraint::id, Function.identity()));

  private Constraints() {}

  /** The constraint that a match is of. */
  public static Constraint of(Match match) {
    return of(match.constraint());
  }

  /**
   * The constraint of an id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Constraint of(String id) {
    Constraint constraint = BY_ID.get(id);
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
