package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.Target;
import counterset.model.TargetCoverage;
import java.util.List;

/**
 * Every target gets its share of the sets, where muscle groups are asked for by name or one more
 * than another; a unit is a squared set away from it. What a whole region wants is said by its
 * movement patterns: its calves are not to work as much as its thighs.
 */
public final class UnevenVolume extends ShareConstraint {

  UnevenVolume() {
    super(
        "unevenVolume",
        points(1),
        "Every target gets its share of the sets.",
        "per set squared away from the share, rounded; not where whole regions are asked for",
        "Uneven volume");
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
    if (!facts.isSharedByMuscle()) {
      return 0;
    }
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

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "target") + " away from the wanted share";
  }

  @Override
  public String said(Told told) {
    String sets = told.coverage().map(UnevenVolume::sets).orElse("its sets");
    return English.lower(told.subject()) + ": " + sets + ", away from an even share";
  }

  private static String sets(TargetCoverage target) {
    int halves = 2 * target.direct() + target.indirect();
    return English.halves(halves) + (halves == 2 ? " set" : " sets");
  }

  @Override
  public String total(Total total) {
    return "the sets are shared out " + (total.better() ? "more evenly" : "less evenly");
  }
}
