package counterset.score;

/**
 * Every target gets its direct sets, on each track too where the track can train it; a unit is a
 * missing set.
 */
public final class TargetUncovered extends CountConstraint {

  TargetUncovered() {
    super(
        "targetUncovered",
        Level.MEDIUM,
        1,
        "Every target gets its direct sets, on each track too where the track can train it.",
        "per missing set");
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
}
