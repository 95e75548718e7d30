package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Every movement pattern that a session of this length should have gets a working set, on each
 * track too where the track can do it; a unit is a pattern.
 */
public final class PatternMissing extends CountConstraint implements MatchByMatch {

  PatternMissing() {
    super(
        "patternMissing",
        wish("Maybe more minutes, or fewer targets."),
        "Every wanted movement pattern gets a working set.",
        "per missing pattern",
        "Movement patterns missing");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.patterns().count();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    if (exercise.merit().fillsPattern()) {
      tags.add(exercise.merit().pattern(), 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int pattern, int exercises) {
    return exercises == 0 && facts.isWanted(pattern) ? 1 : 0;
  }

  @Override
  public String subject(SessionFacts facts, int pattern) {
    return facts.patterns().id(pattern);
  }

  @Override
  public boolean isForTrack(SessionFacts facts, int track, int pattern) {
    return facts.isWanted(pattern) && facts.canFill(track, pattern);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "pattern");
  }

  @Override
  public String said(Told told) {
    return "No working set of: " + told.subject();
  }

  @Override
  public String came(Told told) {
    return "no working set of " + told.subject() + " is left";
  }

  @Override
  public String went(Told told) {
    return "there is a working set of " + told.subject();
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " wanted movement patterns are missing";
  }
}
