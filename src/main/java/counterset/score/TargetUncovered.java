package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Every target gets its direct sets, on each track too where the track can train it; a unit is a
 * missing set.
 */
public final class TargetUncovered extends CountConstraint implements MatchByMatch {

  TargetUncovered() {
    super(
        "targetUncovered",
        wish("Maybe more minutes, fewer targets, or more equipment."),
        "Every target gets its direct sets, on each track too where the track can train it.",
        "per missing set",
        "Direct sets missing");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().targets().size();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    for (int target = 0; target < exercise.halfSets().length; target++) {
      if (exercise.halfSets()[target] == 2) {
        tags.add(target, 1);
      }
    }
  }

  @Override
  public int measure(SessionFacts facts, int target, int exercises) {
    int wanted = facts.problem().targets().get(target).minSets();
    return Math.max(0, wanted - exercises * facts.clock().rounds());
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
        + told.coverage()
            .map(it -> ": " + it.direct() + " of " + it.minSets() + " direct sets")
            .orElse("");
  }

  @Override
  public String came(Told told) {
    String sets = English.count(told.amount(), "direct set");
    return English.lower(told.subject()) + ": " + sets + (told.isWhole() ? " too few" : " less");
  }

  @Override
  public String went(Told told) {
    String sets = English.count(told.amount(), "direct set");
    return English.lower(told.subject())
        + (told.isWhole() ? ": no longer " + sets + " too few" : ": " + sets + " more");
  }

  @Override
  public String total(Total total) {
    String sets = total.amount() == 1 ? " direct set is" : " direct sets are";
    return total.amount() + " " + total.fewer() + sets + " missing";
  }
}
