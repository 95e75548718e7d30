package counterset.planning.constraints;

import counterset.model.Identified;
import counterset.model.Problem;

/**
 * The catalogue of the constraints of one session: what each is called, how much it weighs and what
 * it says.
 *
 * <p>The {@link #id} is also the name of the method that defines it and of the test that holds it.
 */
public enum SessionConstraint implements Identified {
  EXERCISE_REPEATED(
      "exerciseRepeated",
      Level.HARD,
      1,
      "No exercise, nor a variant of it, comes twice.",
      "per repeated pair"),
  SIDES_SPLIT(
      "sidesSplit",
      Level.HARD,
      1,
      "A one-sided exercise fills one superset: one side, then the other.",
      "per superset that breaks it"),
  EQUIPMENT_MISSING(
      "equipmentMissing",
      Level.HARD,
      1,
      "Only equipment that the client has is used.",
      "per exercise and missing item"),
  UNSAFE_FOR_CLIENT(
      "unsafeForClient",
      Level.HARD,
      1,
      "Nothing that a limitation of the session forbids is done.",
      "per exercise and limitation"),
  CHANGEOVER_TOO_LONG(
      "changeoverTooLong",
      Level.HARD,
      1,
      "Every changeover fits in its pause, on each track too.",
      "per second too long"),
  CLOCK_OVERRUN(
      "clockOverrun",
      Level.HARD,
      1,
      "The session ends within its minutes.",
      "per second over the cap"),
  KEPT_MOVED(
      "keptMoved",
      Level.HARD,
      1,
      "Exercises that the coach keeps stay where they are.",
      "per kept place that changed"),
  ABOVE_LEVEL("aboveLevel", Level.HARD, 1, "Nothing is above the client's level.", "per exercise"),
  EXCLUDED("excluded", Level.HARD, 1, "Nothing that the coach excluded is used.", "per exercise"),
  MODIFICATION_MISSING(
      "modificationMissing",
      Level.HARD,
      1,
      "Every track has a modification beside each exercise that does not suit it.",
      "per track and exercise without one"),
  TRACK_REPEATED(
      "trackRepeated",
      Level.HARD,
      1,
      "No modification brings an exercise, nor a variant of it, twice to a track.",
      "per track and repeated pair"),
  TARGET_UNCOVERED(
      "targetUncovered",
      Level.MEDIUM,
      1,
      "Every target gets its direct sets, on each track too where the track can train it.",
      "per missing set"),
  SUPERSET_EMPTY(
      "supersetEmpty",
      Level.MEDIUM,
      1,
      "Every superset that the clock has room for is filled.",
      "per superset with a hole"),
  EQUIPMENT_UNUSED(
      "equipmentUnused",
      Level.MEDIUM,
      1,
      "All equipment that the coach listed is put to use.",
      "per unused item"),
  INCLUDE_MISSING(
      "includeMissing",
      Level.MEDIUM,
      1,
      "Every exercise that the coach asked for is there.",
      "per missing exercise"),
  EQUIPMENT_CHANGE(
      "equipmentChange",
      Level.SOFT,
      5,
      "Little is taken up or put away between exercises.",
      "per item"),
  CHANGEOVER_SECONDS("changeoverSeconds", Level.SOFT, 1, "Changeovers are short.", "per second"),
  FLOOR_TRIP(
      "floorTrip",
      Level.SOFT,
      8,
      "One goes down to the floor, or gets up from it, once.",
      "per time after the first"),
  OPPOSING_PAIR(
      "opposingPair",
      Level.SOFT,
      1,
      "Supersets pair what the coach asked to pair.",
      "20 for antagonists (or one muscle twice, if that is asked for), 12 for opposite regions, 10"
          + " for one exercise on both sides"),
  SAME_MUSCLE_IN_A_ROW(
      "sameMuscleInARow",
      Level.SOFT,
      1,
      "Neighbours train different muscles first.",
      "15 inside a superset, 6 across a rest"),
  UNEVEN_VOLUME(
      "unevenVolume",
      Level.SOFT,
      2,
      "Every target gets its share of the sets.",
      "per set squared away from the share, rounded"),
  MAIN_LIFT_MISSING(
      "mainLiftMissing",
      Level.SOFT,
      12,
      "Every main lift for a target is there: for knee and hip, a push, a pull.",
      "per main lift, of moderate intensity at least, that is possible and missing"),
  LIGHT_BEFORE_HEAVY(
      "lightBeforeHeavy",
      Level.SOFT,
      2,
      "Heavy work comes before light work.",
      "per step of intensity by which the later of two exercises is heavier"),
  FAMILY_AGAIN(
      "familyAgain",
      Level.SOFT,
      10,
      "Exercises feel different from each other.",
      "per pair of one family"),
  JOINT_AGAIN(
      "jointAgain",
      Level.SOFT,
      6,
      "Neighbours do not strain the same joint.",
      "per joint that both ask 2 or more of"),
  UNLOADED(
      "unloaded",
      Level.SOFT,
      8,
      "The client's equipment is lifted, not left lying.",
      "per position without it; a chair or mat is no load"),
  TOO_EASY("tooEasy", Level.SOFT, 3, "The work matches the client's level.", "per step below it"),
  TOO_LIGHT(
      "tooLight",
      Level.SOFT,
      3,
      "The work averages at least moderate intensity.",
      "per step of intensity short of 2 a position"),
  ONE_SIDED_SHARE(
      "oneSidedShare",
      Level.SOFT,
      6,
      "A quarter to a half of the supersets are one-sided.",
      "per superset outside that"),
  USED_RECENTLY(
      "usedRecently",
      Level.SOFT,
      1,
      "What was done lately rests.",
      "20 for yesterday, falling to 0 at 14 days"),
  LIKES("likes", Level.SOFT, 10, "What the client likes is welcome.", "per exercise"),
  DISLIKES("dislikes", Level.SOFT, 10, "What the client dislikes is not.", "per exercise"),
  MODIFICATION_AWKWARD(
      "modificationAwkward",
      Level.SOFT,
      1,
      "A modification fits the moment: the same muscles and position, and nothing to fetch.",
      "10 per item to fetch, 4 for another position, 15 if it shares no primary muscle group,"
          + " 4 if it leaves equipment lying");

  /** How much a constraint matters; a higher level is never traded for a lower one. */
  public enum Level implements Identified {
    HARD("hard"),
    MEDIUM("medium"),
    SOFT("soft");

    private final String id;

    Level(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }

  private final String id;
  private final Level level;
  private final int defaultWeight;
  private final String sentence;
  private final String unit;

  SessionConstraint(String id, Level level, int defaultWeight, String sentence, String unit) {
    this.id = id;
    this.level = level;
    this.defaultWeight = defaultWeight;
    this.sentence = sentence;
    this.unit = unit;
  }

  @Override
  public String id() {
    return id;
  }

  /** Its level. */
  public Level level() {
    return level;
  }

  /** The points of one unit unless the problem says otherwise, at least 1. */
  public int defaultWeight() {
    return defaultWeight;
  }

  /**
   * The points of one unit in a problem, which may override the default; 0 switches the constraint
   * off.
   */
  public int weight(Problem problem) {
    return problem.weights().getOrDefault(id, defaultWeight);
  }

  /** What it wants, as a coach would say it. */
  public String sentence() {
    return sentence;
  }

  /** What its weight is counted by. */
  public String unit() {
    return unit;
  }

  /** Whether a match earns points instead of costing them. */
  public boolean isReward() {
    return this == OPPOSING_PAIR || this == LIKES;
  }
}
