package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * A session does not have one movement twice in other clothes; a unit is an exercise beyond the
 * first of a movement, or beyond what a narrow request needs.
 */
public final class Twin extends CountConstraint implements MatchByMatch {

  Twin() {
    super(
        "twin",
        points(30),
        "No movement comes twice in other clothes.",
        "per exercise of a movement beyond the first, or beyond what a narrow request needs",
        "Movements that come again");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.candidates().stream().mapToInt(Candidate::family).max().orElse(-1) + 1;
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    tags.add(exercise.family(), 1);
  }

  @Override
  public int measure(SessionFacts facts, int tag, int exercises) {
    return Math.max(0, exercises - allowed(facts));
  }

  private static int allowed(SessionFacts facts) {
    return facts.breadth() == 0 ? 1 : Math.max(1, facts.places() / facts.breadth() / 2);
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
