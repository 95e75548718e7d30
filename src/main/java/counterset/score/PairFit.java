package counterset.score;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.Pairing;
import counterset.model.SupersetKind;
import java.util.List;

/**
 * A pair lets one part of the body rest while the other works; a unit is a point. What two movement
 * patterns are worth to each other is in {@link PairTable}.
 */
public final class PairFit extends SupersetConstraint {

  private static final int BOTH_SIDES = 4;
  private static final int NOT_THE_SAME = 12;

  PairFit() {
    super(
        "pairWorth",
        Weight.points(1),
        "A pair lets one part of the body rest while the other works.",
        "0 for the best pairs to 16 for the worst, 4 for one exercise on both sides",
        "Pairs that do not rest each other");
  }

  @Override
  void measure(Group superset, Matches matches) {
    if (superset.kind() == null || superset.pairing() == Pairing.FREE) {
      return;
    }
    if (superset.kind() == SupersetKind.UNILATERAL) {
      matches.match(BOTH_SIDES, 0, superset.size() - 1);
      return;
    }
    for (int position = 1; position < superset.size(); position++) {
      int cost =
          superset.pairing() == Pairing.COMPOUND
              ? ofSame(superset.kind())
              : superset.pairCost(position - 1);
      if (cost > 0) {
        matches.match(cost, position - 1, position);
      }
    }
  }

  private static int ofSame(SupersetKind kind) {
    return kind == SupersetKind.COMPOUND ? 0 : NOT_THE_SAME;
  }

  /** What a pair by itself costs at least, in units. */
  public static int between(SessionFacts facts, Candidate one, Candidate other) {
    return switch (facts.problem().pairing()) {
      case FREE -> 0;
      case COMPOUND -> ofSame(facts.kind(one, other));
      case OPPOSING -> PairTable.of(facts).cost(one, other);
    };
  }

  /** What one exercise on both sides costs, in units. */
  public static int bothSides(Pairing pairing) {
    return pairing == Pairing.FREE ? 0 : BOTH_SIDES;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "pair") + " short of the best";
  }

  @Override
  public String said(Told told) {
    return told.supersetOf(told.plan())
        .filter(superset -> superset.isUnilateral())
        .map(superset -> "one exercise, one side and then the other")
        .orElse("the pair could rest each other better");
  }

  @Override
  public String total(Total total) {
    return "the pairs rest each other " + (total.better() ? "better" : "less well");
  }

  @Override
  public boolean isBetweenPlaces() {
    return true;
  }
}
