package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * No movement pattern has many more places than its share, nor a wanted one many fewer; a unit is
 * half a place squared. What a pattern inherits it may have, but need not. A one-sided exercise,
 * which takes two places, counts as one and a half.
 */
public final class Crowded extends CountConstraint {

  private static final int HALVES = 2;
  private static final int ONE_SIDED = 3;
  private static final double FREE_ABOVE = 2;
  private static final double FREE_BELOW = 2.4;

  Crowded() {
    super(
        "crowded",
        points(2),
        "Each movement pattern gets its share of the places.",
        "per half place squared, beyond one place too many or 1.2 too few; any place of a pattern without a share",
        "Movement patterns beside their share");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.patterns().count();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    tags.add(exercise.merit().pattern(), exercise.unilateral() ? ONE_SIDED : HALVES);
  }

  @Override
  public int measure(SessionFacts facts, int pattern, int halves) {
    if (facts.breadth() == 0) {
      return 0;
    }
    double most = facts.share(pattern) * facts.places() * HALVES;
    double due = facts.due(pattern) * facts.places() * HALVES;
    double tooMany = Math.max(0, halves - most - (most > 0 ? FREE_ABOVE : 0));
    double tooFew = facts.isWanted(pattern) ? Math.max(0, due - halves - FREE_BELOW) : 0;
    return (int) Math.round(tooMany * tooMany + tooFew * tooFew);
  }

  @Override
  public String subject(SessionFacts facts, int pattern) {
    return facts.patterns().id(pattern);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "pattern");
  }

  @Override
  public String said(Told told) {
    return told.subject() + ": more or fewer places than its share";
  }

  @Override
  public String total(Total total) {
    return "the places are shared out among movement patterns "
        + (total.better() ? "better" : "less well");
  }
}
