package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * A session goes on to another movement pattern once one has had its places; a unit is an exercise
 * beyond its share of them, and beyond the first. Two hinges of a whole-body session are one too
 * many. Common practice, no source.
 */
public final class SameRoot extends CountConstraint {

  /** From eleven twentieths on it is one more; whatever the machine makes of the share. */
  private static final double ROUNDING = 0.45 + 1e-9;

  /** Exercises a place: those on one side and then the other take two, most of them for legs. */
  private static final double A_PLACE = 0.85;

  private static final double A_PLACE_FOR_LEGS = 0.7;

  SameRoot() {
    super(
        "sameRoot",
        points(10),
        "No more exercises of a movement pattern than its share of the places.",
        "per exercise beyond that, and beyond the first",
        "Patterns with an exercise too many");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.patterns().count();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    tags.add(exercise.merit().pattern(), 1);
  }

  @Override
  public int measure(SessionFacts facts, int pattern, int exercises) {
    if (facts.breadth() == 0) {
      return 0;
    }
    double aPlace = facts.patterns().isForLegs() ? A_PLACE_FOR_LEGS : A_PLACE;
    double due = facts.share(pattern) * facts.places() * aPlace;
    return Math.max(0, exercises - Math.max(1, (int) (due + ROUNDING)));
  }

  @Override
  public String subject(SessionFacts facts, int pattern) {
    return facts.patterns().id(pattern);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "exercise");
  }

  @Override
  public String said(Told told) {
    return told.subject() + ": " + English.count(told.amount(), "exercise") + " too many";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises of one movement pattern";
  }
}
