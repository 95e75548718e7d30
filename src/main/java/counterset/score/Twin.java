package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.Arrays;
import java.util.List;

/**
 * A session does not have one movement twice in other clothes; a unit is an exercise beyond the
 * first of a movement, or beyond half of the places that its movement pattern is to get.
 */
public final class Twin extends CountConstraint implements MatchByMatch {

  // A half of six places is three, whatever the machine makes of the share.
  private static final double ROUNDING = 1e-9;

  /** Up to so many wanted patterns a movement has to come again. */
  private static final int FEW = 3;

  Twin() {
    super(
        "twin",
        points(30),
        "No movement comes twice in other clothes.",
        "per exercise of a movement beyond the first, or beyond half of the places of its pattern",
        "Movements that come again");
  }

  @Override
  public int tags(SessionFacts facts) {
    return tagsOf(facts);
  }

  private static int tagsOf(SessionFacts facts) {
    return facts.candidates().stream().mapToInt(Candidate::family).max().orElse(-1) + 1;
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    tags.add(exercise.family(), 1);
  }

  @Override
  public int measure(SessionFacts facts, int tag, int exercises) {
    return Math.max(0, exercises - Allowed.of(facts).exercises()[tag]);
  }

  /** How many exercises of each movement a session may have. */
  private record Allowed(int[] exercises) {

    static Allowed of(SessionFacts facts) {
      return facts.workedOut(Allowed.class, Allowed::count);
    }

    /**
     * Half of the places that its movement pattern is to get, at least one; rounded up where hardly
     * anything else is wanted, as for the shoulders alone.
     */
    private static Allowed count(SessionFacts facts) {
      int[] allowed = new int[tagsOf(facts)];
      Arrays.fill(allowed, 1);
      double rounding = facts.breadth() <= FEW ? 1 : ROUNDING;
      for (Candidate exercise : facts.candidates()) {
        double due = facts.share(exercise.merit().pattern()) * facts.places();
        int movement = exercise.family();
        allowed[movement] = Math.max(allowed[movement], (int) ((due + rounding) / 2));
      }
      return new Allowed(allowed);
    }
  }

  @Override
  void list(List<Counted> counted, int units, PairMatches matches) {
    int first = counted.size() - units;
    for (int later = first; later < counted.size(); later++) {
      matches.match(1, counted.get(later - 1).first(), counted.get(later).first());
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "time");
  }

  @Override
  public String said(Told told) {
    return isTwice(told)
        ? told.exercise() + " comes twice"
        : told.exercise() + " and " + told.last() + " are one movement";
  }

  @Override
  public String went(Told told) {
    return isTwice(told)
        ? told.exercise() + " no longer comes twice"
        : told.exercise() + " and " + told.last() + ", one movement, are no longer both in";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " movements come again";
  }

  private static boolean isTwice(Told told) {
    return told.work().stream().distinct().count() == 1;
  }
}
