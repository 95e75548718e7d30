package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.MovementPattern;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * No two supersets pair the same two movement patterns of the legs, such as squat and hinge, where
 * there are many patterns to choose from; a unit is a superset that does it again.
 */
public final class PairAgain extends SessionConstraint {

  private static final int MANY = 6;

  PairAgain() {
    super(
        "pairAgain",
        points(8),
        "No two supersets pair the same movement patterns of the legs.",
        "per superset that pairs them again, where many patterns are wanted",
        "The same pair of leg patterns again");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.perSuperset() == 2 && facts.supersets() > 1 && facts.breadth() >= MANY;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    Set<Set<Integer>> seen = new HashSet<>();
    for (int first = 0; first < places.length; first += 2) {
      if (isForLegs(facts, places[first]) && isForLegs(facts, places[first + 1])) {
        int one = places[first].merit().pattern();
        int other = places[first + 1].merit().pattern();
        if (one != other && !seen.add(Set.of(one, other))) {
          matches.match(1, first, null);
        }
      }
    }
  }

  private static boolean isForLegs(SessionFacts facts, Candidate exercise) {
    return exercise != null
        && facts
            .patterns()
            .kind(exercise.merit().pattern())
            .map(MovementPattern::group)
            .filter(MovementPattern.Group::isLegs)
            .isPresent();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "superset");
  }

  @Override
  public String said(Told told) {
    return "the same pair of movement patterns once more";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " supersets pair the same movement patterns of the legs";
  }
}
