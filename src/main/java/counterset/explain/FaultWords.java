package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.TargetCoverage;
import counterset.planning.constraints.SessionConstraint.Level;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a constraint matches, with the exercises, what it means and, for a fault, what would mend
 * it.
 */
public final class FaultWords {

  private final Plan plan;
  private final RuleWords rules;
  private final MatchNames named;
  private final TrackFaultWords tracks;

  private FaultWords(Plan plan, Plan whole, Catalogue catalogue) {
    this.plan = plan;
    this.named = new MatchNames(plan, catalogue);
    this.rules = new RuleWords(plan.problem(), catalogue);
    this.tracks = new TrackFaultWords(whole, catalogue);
  }

  /**
   * One line: {@code 3A to 3B: 4 s too long for the changeover: Goblet squat to Side-lying leg
   * raise. Maybe ...}.
   */
  public static String of(Match match, Plan plan, Catalogue catalogue) {
    FaultWords words = new FaultWords(TrackFaultWords.planOf(match, plan), plan, catalogue);
    String remedy = Remedies.of(ScoreWords.constraint(match.constraint()));
    return words.place(match) + words.what(match) + "." + (remedy.isEmpty() ? "" : " " + remedy);
  }

  /** Whether a constraint is a rule or a wish, and not a matter of points. */
  public static boolean isFault(Match match) {
    return ScoreWords.constraint(match.constraint()).level() != Level.SOFT;
  }

  /** Whether a constraint is a rule: its plan is not to be led as it is. */
  public static boolean isBrokenRule(Match match) {
    return ScoreWords.constraint(match.constraint()).level() == Level.HARD;
  }

  private String place(Match match) {
    boolean wholeSuperset = match.constraint().equals("supersetEmpty");
    if (wholeSuperset && !match.places().isEmpty()) {
      return "Superset " + match.places().get(0).superset() + ": ";
    }
    String who = tracks.who(match);
    List<String> places = match.places().stream().map(At::toString).distinct().toList();
    if (places.isEmpty()) {
      return who.isEmpty() ? "" : English.capital(who) + ": ";
    }
    return String.join(" to ", places) + (who.isEmpty() ? "" : ", " + who) + ": ";
  }

  private String what(Match match) {
    String names = named.places(match);
    int amount = match.amount();
    return switch (ScoreWords.constraint(match.constraint())) {
      case EXERCISE_REPEATED -> "the same exercise twice: " + names;
      case SIDES_SPLIT ->
          names + " is one-sided, and its superset does not hold left side and right side";
      case EQUIPMENT_MISSING ->
          names
              + " needs "
              + named.exercise(match).map(rules::missing).orElse("more")
              + ", not among the equipment";
      case UNSAFE_FOR_CLIENT ->
          names
              + " goes against "
              + named.exercise(match).map(rules::broken).orElse("a limitation");
      case CHANGEOVER_TOO_LONG ->
          amount + " s too long for the changeover: " + names + changeover(match);
      case CLOCK_OVERRUN ->
          "All places filled, the session takes " + amount + " s more than " + minutes();
      case KEPT_MOVED -> kept(match);
      case ABOVE_LEVEL -> names + level(match) + " above level " + plan.problem().level();
      case EXCLUDED -> names + " is excluded";
      case MODIFICATION_MISSING -> tracks.missing(match);
      case TRACK_REPEATED -> "the same exercise twice: " + names;
      case TARGET_UNCOVERED -> uncovered(match);
      case SUPERSET_EMPTY -> "not full, although the clock has room for it";
      case EQUIPMENT_UNUSED -> named.subject(match) + ": listed, and no exercise uses it";
      case INCLUDE_MISSING -> named.subject(match) + ": asked for, and not in the session";
      case EQUIPMENT_CHANGE -> English.count(amount, "item") + " taken up or put away: " + names;
      case CHANGEOVER_SECONDS -> amount + " s of changeover: " + names;
      case FLOOR_TRIP -> "down to the floor or up again: " + names;
      case OPPOSING_PAIR -> "paired as asked: " + names;
      case SAME_MUSCLE_IN_A_ROW -> "the same main muscle twice running: " + names;
      case UNEVEN_VOLUME -> named.subject(match) + ": away from its share of the sets";
      case MAIN_LIFT_MISSING -> "No " + LiftWords.of(match) + " of moderate intensity or more";
      case LIGHT_BEFORE_HEAVY -> "lighter before heavier: " + names;
      case FAMILY_AGAIN -> "these feel alike: " + names;
      case JOINT_AGAIN -> "the same joint strained twice running: " + names;
      case UNLOADED -> names + " leaves the client's equipment out";
      case TOO_EASY -> names + " is below the client's level";
      case TOO_LIGHT -> "The work is lighter than moderate on the whole";
      case ONE_SIDED_SHARE -> "One-sided supersets are not a quarter to a half of the session";
      case USED_RECENTLY -> names + " was done lately";
      case LIKES -> names + " is liked";
      case DISLIKES -> names + " is disliked";
      case MODIFICATION_AWKWARD -> tracks.awkward(match);
    };
  }

  private String minutes() {
    return English.count(plan.problem().minutes(), "minute");
  }

  private String level(Match match) {
    return named
        .exercise(match)
        .map(exercise -> " is level " + exercise.level() + ",")
        .orElse(" is");
  }

  private String uncovered(Match match) {
    Optional<TargetCoverage> coverage =
        plan.coverage().stream()
            .filter(target -> Optional.of(target.muscle()).equals(match.subject()))
            .findFirst();
    return named.subject(match)
        + coverage
            .map(target -> ": " + target.direct() + " of " + target.minSets() + " direct sets")
            .orElse("");
  }

  private String kept(Match match) {
    String wanted = named.subject(match);
    String now = named.places(match);
    String where =
        plan.problem().keep().stream()
            .filter(keep -> Optional.of(keep.exercise()).equals(match.subject()))
            .filter(keep -> match.places().isEmpty() || match.places().contains(keep.at()))
            .map(keep -> " at " + keep.at())
            .findFirst()
            .orElse("");
    String instead = now.isEmpty() ? "the place is empty" : now + " stands there";
    return wanted + " is kept" + where + ", and " + instead;
  }

  private String changeover(Match match) {
    return plan.changeovers().stream()
        .filter(
            changeover ->
                match.places().indexOf(changeover.after()) == 0 && isTo(changeover, match))
        .max(Comparator.comparingInt(Changeover::excess))
        .map(
            changeover ->
                " (" + changeover.seconds() + " s needed, " + changeover.available() + " s there)")
        .orElse("");
  }

  private boolean isTo(Changeover changeover, Match match) {
    return named
        .exercise(match.places().get(match.places().size() - 1))
        .filter(changeover.to()::equals)
        .isPresent();
  }
}
