package counterset.explain;

import counterset.explain.Turnover.Part;
import counterset.model.Catalogue;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.TargetCoverage;

/** Where points come from: one match of a constraint as a clause, without its places. */
public final class PointWords {

  private final Plan plan;
  private final Catalogue catalogue;
  private final PartNames names;
  private final ComingWords coming;
  private final KindWords kinds;

  /** Words for the matches of one plan. */
  public PointWords(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.names = new PartNames(catalogue);
    this.coming = new ComingWords(names);
    this.kinds = new KindWords(catalogue);
  }

  /** Such as {@code changing over takes 8 s}; a fault is told with its place and its remedy. */
  public String of(Match match) {
    if (FaultWords.isFault(match)) {
      return FaultWords.of(match, plan, catalogue);
    }
    Part part = part(match);
    int amount = match.amount();
    return switch (ScoreWords.constraint(match.constraint())) {
      case EQUIPMENT_CHANGE -> English.count(amount, "item") + " to take up or put away";
      case CHANGEOVER_SECONDS -> "changing over takes " + amount + " s";
      case FLOOR_TRIP -> "once more down to the floor, or up from it";
      case OPPOSING_PAIR -> pairing(match);
      case UNEVEN_VOLUME -> uneven(part);
      case MAIN_LIFT_MISSING -> "there is no " + LiftWords.of(match) + " of moderate intensity";
      case LIGHT_BEFORE_HEAVY ->
          names.exercise(part) + " comes before " + names.other(part) + ", which is heavier work";
      case TOO_LIGHT ->
          "the work is lighter than moderate on the whole, by " + English.count(amount, "step");
      case ONE_SIDED_SHARE ->
          "one-sided supersets are not a quarter to a half of the session, by "
              + English.count(amount, "superset");
      default -> coming.clause(part);
    };
  }

  private String pairing(Match match) {
    int number = match.places().get(0).superset();
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == number)
        .findFirst()
        .map(this::pair)
        .orElse("paired as asked");
  }

  private String pair(Superset superset) {
    String heading = kinds.heading(superset);
    return superset.isUnilateral()
        ? "one exercise, one side and then the other"
        : "the pair trains " + heading.replaceFirst("^(opposites|the same muscle twice): ", "");
  }

  private String uneven(Part part) {
    String sets =
        plan.coverage().stream()
            .filter(target -> target.muscle().equals(part.match().subject().orElse("")))
            .findFirst()
            .map(PointWords::sets)
            .orElse("its sets");
    return English.lower(names.subject(part)) + ": " + sets + ", away from an even share";
  }

  private Part part(Match match) {
    return new Part(match, plan, true, true, match.amount(), match.points());
  }

  private static String sets(TargetCoverage target) {
    double sets = target.sets();
    boolean whole = sets == StrictMath.rint(sets);
    return (whole ? Integer.toString((int) sets) : Double.toString(sets))
        + (sets == 1 ? " set" : " sets");
  }
}
