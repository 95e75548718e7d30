package counterset.explain;

import counterset.planning.constraints.SessionConstraint;
import java.util.Optional;

/** What a constraint counts more or less of, as a clause. */
final class TotalWords {

  private TotalWords() {}

  /** Whatever came and went, taken together. */
  static String of(Turnover turnover) {
    boolean better = turnover.points() > 0;
    int amount = Math.abs(turnover.amount());
    String fewer = better ? "fewer " : "more ";
    String less = better ? "less" : "more";
    return switch (turnover.constraint()) {
      case EXERCISE_REPEATED, TRACK_REPEATED -> fewer + "exercises come twice";
      case SIDES_SPLIT -> fewer + "one-sided exercises lack their other side";
      case EQUIPMENT_MISSING -> fewer + "exercises need what the client does not have";
      case UNSAFE_FOR_CLIENT -> fewer + "exercises go against a limitation";
      case CHANGEOVER_TOO_LONG -> "the changeovers are too long by " + amount + " s " + less;
      case CLOCK_OVERRUN -> "the session is " + amount + " s " + less + " over the cap";
      case KEPT_MOVED -> fewer + "kept places have changed";
      case ABOVE_LEVEL -> fewer + "exercises are above the client's level";
      case EXCLUDED -> fewer + "excluded exercises are used";
      case MODIFICATION_MISSING -> fewer + "modifications are missing";
      case TARGET_UNCOVERED ->
          amount + " " + fewer + (amount == 1 ? "direct set is" : "direct sets are") + " missing";
      case SUPERSET_EMPTY -> fewer + "supersets have a hole";
      case EQUIPMENT_UNUSED -> fewer + "items lie unused";
      case INCLUDE_MISSING -> fewer + "exercises that you asked for are missing";
      case EQUIPMENT_CHANGE ->
          amount + " " + fewer + (amount == 1 ? "item" : "items") + " to take up or put away";
      case CHANGEOVER_SECONDS ->
          "changing over takes " + amount + " s " + (better ? "less" : "longer");
      case FLOOR_TRIP ->
          English.number(amount)
              + (amount == 1 ? " trip" : " trips")
              + " to or from the floor "
              + less;
      case OPPOSING_PAIR -> "the supersets pair " + (better ? "better" : "less well");
      case SAME_MUSCLE_IN_A_ROW -> "the same muscle works twice running " + less + " often";
      case UNEVEN_VOLUME -> "the sets are shared out " + (better ? "more evenly" : "less evenly");
      case MAIN_LIFT_MISSING -> fewer + "main lifts are missing";
      case LIGHT_BEFORE_HEAVY -> "light work comes before heavier work " + less + " often";
      case FAMILY_AGAIN -> fewer + "exercises feel alike";
      case JOINT_AGAIN -> "the same joint is strained twice running " + less + " often";
      case UNLOADED -> less + " work leaves the client's equipment lying";
      case TOO_EASY ->
          "the work is " + (better ? "nearer to" : "further below") + " the client's level";
      case TOO_LIGHT -> "the work is " + (better ? "heavier" : "lighter") + " on the whole";
      case ONE_SIDED_SHARE ->
          "one-sided supersets are "
              + (better ? "nearer to" : "further from")
              + " a quarter to a half of the session";
      case USED_RECENTLY -> less + " of it was done lately";
      case LIKES -> (better ? "more" : "less") + " of what the client likes";
      case DISLIKES -> less + " of what the client dislikes";
      case MODIFICATION_AWKWARD ->
          "the modifications fit the moment " + (better ? "better" : "less well");
    };
  }

  /** One that came and one that went, where the two differ by degree only. */
  static Optional<String> ofTwo(Turnover turnover, PartNames names) {
    if (turnover.parts().size() != 2
        || turnover.parts().get(0).came() == turnover.parts().get(1).came()) {
      return Optional.empty();
    }
    boolean first = turnover.parts().get(0).came();
    String now = names.exercise(turnover.parts().get(first ? 0 : 1));
    String before = names.exercise(turnover.parts().get(first ? 1 : 0));
    boolean better = turnover.points() > 0;
    if (turnover.constraint() == SessionConstraint.TOO_EASY) {
      String than = better ? " is nearer to" : " is further below";
      return Optional.of(now + than + " the client's level than " + before);
    }
    if (turnover.constraint() == SessionConstraint.USED_RECENTLY) {
      return Optional.of(
          now + " was done " + (better ? "longer ago" : "more lately") + " than " + before);
    }
    return Optional.empty();
  }
}
