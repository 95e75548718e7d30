package counterset.explain;

import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.planning.constraints.SessionConstraint;
import java.util.List;
import java.util.Locale;

/** What each constraint has counted, in plain words. */
public final class ScoreWords {

  private ScoreWords() {}

  /** One line: {@code Equipment changes: 4 items taken up or put away: -20}. */
  public static String of(PlanScore.Line line, Plan plan) {
    return counted(line, plan) + ": " + points(line.score());
  }

  /** Points with their sign: {@code +12}, {@code 0}, {@code -20}. */
  public static String points(int points) {
    return points == 0 ? "0" : String.format(Locale.ROOT, "%+d", points);
  }

  /** What it counted, without the points. */
  public static String counted(PlanScore.Line line, Plan plan) {
    List<Match> matches =
        plan.matches().stream().filter(match -> match.constraint().equals(line.id())).toList();
    int amount = matches.stream().mapToInt(Match::amount).sum();
    int number = matches.size();
    return switch (constraint(line.id())) {
      case EXERCISE_REPEATED -> "Repeated exercises: " + English.count(amount, "pair");
      case SIDES_SPLIT -> "One-sided exercises without their other side: " + amount;
      case EQUIPMENT_MISSING ->
          "Equipment that the client does not have: " + English.count(amount, "item");
      case UNSAFE_FOR_CLIENT -> "Against a limitation: " + English.count(number, "exercise");
      case CHANGEOVER_TOO_LONG ->
          "Changeovers too long: " + amount + " s over, in " + English.count(number, "place");
      case CLOCK_OVERRUN -> "Over the cap: " + amount + " s";
      case KEPT_MOVED -> "Kept places that changed: " + amount;
      case ABOVE_LEVEL -> "Above the client's level: " + English.count(number, "exercise");
      case EXCLUDED -> "Excluded and still used: " + English.count(number, "exercise");
      case MODIFICATION_MISSING ->
          "Modifications missing or not suitable: " + English.count(amount, "place");
      case TRACK_REPEATED -> "Repeated on a track: " + English.count(amount, "pair");
      case TARGET_UNCOVERED ->
          "Direct sets missing: "
              + English.count(amount, "set")
              + ", of "
              + English.count(number, "target");
      case SUPERSET_EMPTY -> "Supersets not filled: " + amount;
      case EQUIPMENT_UNUSED -> "Equipment listed but not used: " + English.count(amount, "item");
      case INCLUDE_MISSING -> "Asked for but not there: " + English.count(amount, "exercise");
      case EQUIPMENT_CHANGE ->
          "Equipment changes: " + English.count(amount, "item") + " taken up or put away";
      case CHANGEOVER_SECONDS ->
          "Changeover time: " + amount + " s, over " + English.count(number, "changeover");
      case FLOOR_TRIP -> "Down to the floor or up again after the first time: " + times(number);
      case OPPOSING_PAIR -> "Pairing: " + English.count(number, "superset") + " as asked";
      case SAME_MUSCLE_IN_A_ROW -> "The same main muscle twice running: " + times(number);
      case UNEVEN_VOLUME ->
          "Uneven volume: " + English.count(number, "target") + " away from the wanted share";
      case MAIN_LIFT_MISSING -> "Main lifts missing: " + LiftWords.all(matches);
      case LIGHT_BEFORE_HEAVY ->
          "Light before heavy: "
              + English.count(amount, "step")
              + ", over "
              + English.count(number, "pair");
      case FAMILY_AGAIN -> "Exercises that feel alike: " + English.count(number, "pair");
      case JOINT_AGAIN -> "The same joint strained twice running: " + times(amount);
      case UNLOADED -> "Without the client's equipment: " + English.count(number, "position");
      case TOO_EASY -> "Below the client's level: " + English.count(amount, "step");
      case TOO_LIGHT -> "Lighter than moderate on the whole: " + English.count(amount, "step");
      case ONE_SIDED_SHARE ->
          "One-sided share outside a quarter to a half: by " + English.count(amount, "superset");
      case USED_RECENTLY -> "Done lately: " + English.count(number, "exercise");
      case LIKES -> "Liked: " + English.count(number, "exercise");
      case DISLIKES -> "Disliked: " + English.count(number, "exercise");
      case MODIFICATION_AWKWARD ->
          "Modifications that do not quite fit the moment: " + English.count(number, "place");
    };
  }

  private static String times(int number) {
    return English.count(number, "time");
  }

  /** What a constraint is about, in a few words without a figure: {@code Equipment changes}. */
  public static String topic(PlanScore.Line line, Plan plan) {
    String counted = counted(line, plan);
    return counted.substring(0, counted.indexOf(": "));
  }

  static SessionConstraint constraint(String id) {
    for (SessionConstraint constraint : SessionConstraint.values()) {
      if (constraint.id().equals(id)) {
        return constraint;
      }
    }
    throw new IllegalArgumentException("The constraint (" + id + ") is not known.");
  }
}
