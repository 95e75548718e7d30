package counterset.score;

import counterset.model.Target;

/** Every target gets its share of the sets; a unit is a squared set away from it. */
public final class UnevenVolume extends ShareConstraint {

  UnevenVolume() {
    super(
        "unevenVolume",
        Level.SOFT,
        2,
        "Every target gets its share of the sets.",
        "per set squared away from the share, rounded");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().targets().size();
  }

  /** In half sets a round. */
  @Override
  public int ofExercise(Candidate exercise, int target) {
    return exercise.halfSets()[target];
  }

  @Override
  public int kind(SessionFacts facts, int target) {
    return facts.problem().targets().get(target).emphasis();
  }

  @Override
  public int measure(SessionFacts facts, int target, int count, int all) {
    int rounds = facts.clock().rounds();
    int emphases = facts.problem().targets().stream().mapToInt(Target::emphasis).sum();
    int emphasis = facts.problem().targets().get(target).emphasis();
    return squaredDistance(count * rounds, all * rounds, emphasis, emphases);
  }

  /** In sets, rounded to the nearest whole number, half up. */
  private static int squaredDistance(int halfSets, int allHalfSets, int emphasis, int emphases) {
    long away = (long) halfSets * emphases - (long) emphasis * allHalfSets;
    long unit = 4L * emphases * emphases;
    return Math.toIntExact((2 * away * away + unit) / (2 * unit));
  }

  @Override
  public String subject(SessionFacts facts, int target) {
    return facts.problem().targets().get(target).muscle();
  }
}
