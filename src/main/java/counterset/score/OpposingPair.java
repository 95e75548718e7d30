package counterset.score;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.Pairing;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.SupersetKind;
import java.util.List;
import java.util.Optional;

/** Supersets pair what the coach asked to pair; a unit is a point. */
public final class OpposingPair extends SupersetConstraint implements MatchByMatch {

  OpposingPair() {
    super(
        "opposingPair",
        Weight.points(1),
        "Supersets pair what the coach asked to pair.",
        "20 for antagonists (or one muscle twice, if that is asked for), 12 for opposite regions, 10 for one exercise on both sides",
        "Pairing");
  }

  private static final int STRICT = 20;
  private static final int OPPOSITE_REGION = 12;
  private static final int BOTH_SIDES = 10;

  @Override
  void measure(Group superset, Matches matches) {
    if (superset.kind() != null) {
      int points = points(superset.pairing(), superset.kind());
      if (points > 0) {
        matches.match(points, 0, superset.size() - 1);
      }
    }
  }

  /** What a superset of a kind is worth, in units, at least 0. */
  public int points(Pairing pairing, SupersetKind kind) {
    if (pairing == Pairing.FREE) {
      return 0;
    }
    return switch (kind) {
      case UNILATERAL -> BOTH_SIDES;
      case AGONIST_ANTAGONIST -> pairing == Pairing.OPPOSING ? STRICT : 0;
      case OPPOSITE_REGION -> pairing == Pairing.OPPOSING ? OPPOSITE_REGION : 0;
      case COMPOUND -> pairing == Pairing.COMPOUND ? STRICT : 0;
      case MIXED -> 0;
    };
  }

  @Override
  public boolean isReward() {
    return true;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "superset") + " as asked";
  }

  @Override
  public String said(Told told) {
    Optional<Superset> superset = told.supersetOf(told.plan());
    if (superset.filter(Superset::isUnilateral).isPresent()) {
      return "one exercise, one side and then the other";
    }
    return superset
        .map(pair -> "the pair trains " + told.names().trained(pair))
        .orElse("paired as asked");
  }

  @Override
  public String came(Told told) {
    String now = asPair(told.plan(), told);
    return told.isWhole()
        ? "superset " + told.superset() + " is now " + now
        : changed(told, now, asPair(told.other(), told));
  }

  @Override
  public String went(Told told) {
    String before = asPair(told.plan(), told);
    return told.isWhole()
        ? "superset " + told.superset() + " is no longer " + before
        : changed(told, asPair(told.other(), told), before);
  }

  private static String changed(Told told, String now, String before) {
    return "superset " + told.superset() + " is " + now + " instead of " + before;
  }

  private static String asPair(Plan plan, Told told) {
    return told.supersetOf(plan).map(told.names()::pairing).orElse("nothing");
  }

  @Override
  public String total(Total total) {
    return "the supersets pair " + (total.better() ? "better" : "less well");
  }

  @Override
  public boolean isBetweenPlaces() {
    return true;
  }

  @Override
  public boolean isToldInOrder() {
    return true;
  }
}
