package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Every target gets the sets that it needs, on each track too where the track can train it; a unit
 * is a missing set. What a target needs and what counts is in {@link TargetNeeds}.
 */
public final class TargetUncovered extends CountConstraint implements MatchByMatch {

  TargetUncovered() {
    super(
        "targetUncovered",
        wish("Maybe more minutes, fewer targets, or more equipment."),
        "Every target gets the sets that it needs, on each track too where the track can train it.",
        "per missing set",
        "Sets missing");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().targets().size();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    for (int target = 0; target < exercise.halfSets().length; target++) {
      int credit = facts.needs().credit(exercise, target);
      if (credit > 0) {
        tags.add(target, credit);
      }
    }
  }

  @Override
  public int measure(SessionFacts facts, int target, int credit) {
    int missing = facts.needs().of(target) - credit * facts.clock().rounds();
    return Math.max(0, (missing + TargetNeeds.SET - 1) / TargetNeeds.SET);
  }

  @Override
  public String subject(SessionFacts facts, int target) {
    return facts.problem().targets().get(target).muscle();
  }

  @Override
  public boolean isForTrack(SessionFacts facts, int track, int target) {
    return facts.canTrain(track, target);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "set") + ", of " + English.count(matches.size(), "target");
  }

  @Override
  public String said(Told told) {
    return told.subject()
        + ": "
        + English.count(told.amount(), "set")
        + " too few"
        + told.coverage()
            .map(it -> ", with " + it.direct() + " direct and " + it.indirect() + " indirect")
            .orElse("");
  }

  @Override
  public String came(Told told) {
    String sets = English.count(told.amount(), "set");
    return English.lower(told.subject()) + ": " + sets + (told.isWhole() ? " too few" : " less");
  }

  @Override
  public String went(Told told) {
    String sets = English.count(told.amount(), "set");
    return English.lower(told.subject())
        + (told.isWhole() ? ": no longer " + sets + " too few" : ": " + sets + " more");
  }

  @Override
  public String total(Total total) {
    String sets = total.amount() == 1 ? " set is" : " sets are";
    return total.amount() + " " + total.fewer() + sets + " missing";
  }
}
