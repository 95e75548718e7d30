package counterset.explain;

import counterset.explain.Turnover.Part;

/** What it means that a match went, as a clause. */
final class GoingWords {

  private final PartNames names;

  GoingWords(PartNames names) {
    this.names = names;
  }

  String clause(Part part) {
    String exercise = names.exercise(part);
    return switch (ScoreWords.constraint(part.match().constraint())) {
      case EXERCISE_REPEATED -> exercise + " no longer comes twice";
      case SIDES_SPLIT -> exercise + " no longer lacks its other side";
      case EQUIPMENT_MISSING -> exercise + ", which needs " + names.missing(part) + ", goes";
      case UNSAFE_FOR_CLIENT ->
          exercise + ", which goes against " + names.limitations(part) + ", goes";
      case CHANGEOVER_TOO_LONG ->
          part.whole()
              ? "the changeover is no longer " + part.amount() + " s too long"
              : "the changeover is " + part.amount() + " s shorter";
      case KEPT_MOVED -> names.subject(part) + " is where it is kept";
      case ABOVE_LEVEL -> exercise + ", which is above the client's level, goes";
      case EXCLUDED -> exercise + ", which is excluded, goes";
      case MODIFICATION_MISSING -> exercise + " no longer lacks a modification that suits";
      case TRACK_REPEATED -> names.subject(part) + " no longer comes twice";
      case TARGET_UNCOVERED ->
          English.lower(names.subject(part))
              + (part.whole() ? ": no longer " : ": ")
              + English.count(part.amount(), "direct set")
              + (part.whole() ? " too few" : " more");
      case SUPERSET_EMPTY -> "superset " + names.superset(part) + " no longer has a hole";
      case EQUIPMENT_UNUSED -> "an exercise now uses " + names.equipment(part);
      case INCLUDE_MISSING -> names.subject(part) + ", which you asked for, is in";
      case SAME_MUSCLE_IN_A_ROW -> "no longer " + names.muscles(part) + " twice running";
      case MAIN_LIFT_MISSING ->
          "there is now a " + LiftWords.of(part.match()) + " of moderate intensity";
      case FAMILY_AGAIN ->
          names.isTwice(part)
              ? exercise + " no longer comes twice"
              : exercise
                  + " and "
                  + names.other(part)
                  + ", which feel alike, are no longer both in";
      case JOINT_AGAIN -> "no more strain on " + names.joints(part) + " twice running";
      case UNLOADED -> exercise + ", which leaves the client's equipment lying, goes";
      case TOO_EASY -> exercise + ", which is below the client's level, goes";
      case USED_RECENTLY -> exercise + ", which was done lately, goes";
      case LIKES -> exercise + ", which is liked, goes";
      case DISLIKES -> exercise + ", which is disliked, goes";
      case MODIFICATION_AWKWARD ->
          names.subject(part) + ", which did not quite fit the moment, goes";
      default -> throw new IllegalArgumentException(part.match().constraint());
    };
  }
}
