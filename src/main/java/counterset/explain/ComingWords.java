package counterset.explain;

import counterset.explain.Turnover.Part;

/** What a match that came means, as a clause. */
final class ComingWords {

  private final PartNames names;

  ComingWords(PartNames names) {
    this.names = names;
  }

  String clause(Part part) {
    String exercise = names.exercise(part);
    return switch (ScoreWords.constraint(part.match().constraint())) {
      case EXERCISE_REPEATED -> exercise + " comes twice";
      case SIDES_SPLIT -> exercise + " is left without its other side";
      case EQUIPMENT_MISSING -> exercise + " needs " + names.missing(part);
      case UNSAFE_FOR_CLIENT -> exercise + " goes against " + names.limitations(part);
      case CHANGEOVER_TOO_LONG ->
          "the changeover is " + part.amount() + " s " + (part.whole() ? "too long" : "longer");
      case KEPT_MOVED -> names.subject(part) + " is no longer where it is kept";
      case ABOVE_LEVEL -> exercise + " is above the client's level";
      case EXCLUDED -> exercise + " is excluded";
      case MODIFICATION_MISSING -> exercise + " has no modification that suits";
      case TRACK_REPEATED -> names.subject(part) + " comes twice";
      case TARGET_UNCOVERED ->
          English.lower(names.subject(part))
              + ": "
              + English.count(part.amount(), "direct set")
              + (part.whole() ? " too few" : " less");
      case SUPERSET_EMPTY -> "superset " + names.superset(part) + " has a hole";
      case EQUIPMENT_UNUSED -> "no exercise uses " + names.equipment(part) + " any more";
      case INCLUDE_MISSING -> names.subject(part) + ", which you asked for, is gone";
      case SAME_MUSCLE_IN_A_ROW -> names.muscles(part) + " twice running";
      case MAIN_LIFT_MISSING ->
          "there is no " + LiftWords.of(part.match()) + " of moderate intensity any more";
      case FAMILY_AGAIN ->
          names.isTwice(part)
              ? exercise + " comes twice"
              : exercise + " feels like " + names.other(part);
      case JOINT_AGAIN -> "strain on " + names.joints(part) + " twice running";
      case UNLOADED -> exercise + " leaves the client's equipment lying";
      case TOO_EASY -> exercise + " is below the client's level";
      case USED_RECENTLY -> exercise + " was done lately";
      case LIKES -> exercise + " is liked";
      case DISLIKES -> exercise + " is disliked";
      case MODIFICATION_AWKWARD ->
          names.subject(part) + " does not quite fit the moment of " + exercise;
      default -> throw new IllegalArgumentException(part.match().constraint());
    };
  }
}
