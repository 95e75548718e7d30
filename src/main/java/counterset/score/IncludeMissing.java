package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Every exercise that the coach asked for is there; a unit is an exercise. */
public final class IncludeMissing extends CountConstraint implements MatchByMatch {

  IncludeMissing() {
    super(
        "includeMissing",
        wish("Maybe keep it at a place, or drop another wish."),
        "Every exercise that the coach asked for is there.",
        "per missing exercise",
        "Asked for but not there");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().include().size();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    if (exercise.included() != 0) {
      tags.add(Long.numberOfTrailingZeros(exercise.included()), 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int wish, int exercises) {
    return exercises == 0 ? 1 : 0;
  }

  @Override
  public String subject(SessionFacts facts, int wish) {
    return facts.problem().include().stream().skip(wish).findFirst().orElseThrow();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "exercise");
  }

  @Override
  public String said(Told told) {
    return told.subject() + ": asked for, and not in the session";
  }

  @Override
  public String came(Told told) {
    return told.subject() + ", which you asked for, is gone";
  }

  @Override
  public String went(Told told) {
    return told.subject() + ", which you asked for, is in";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises that you asked for are missing";
  }
}
