package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Identified;
import counterset.model.MainLift;
import counterset.model.Match;
import java.util.List;

/** Every {@link MainLift} for a target that the client can do is there; a unit is a main lift. */
public final class MainLiftMissing extends CountConstraint implements MatchByMatch {

  MainLiftMissing() {
    super(
        "mainLiftMissing",
        points(12),
        "Every main lift for a target is there: for knee and hip, a push, a pull.",
        "per main lift, of moderate intensity at least, that is possible and missing",
        "Main lifts missing");
  }

  @Override
  public int tags(SessionFacts facts) {
    return MainLift.values().length;
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    for (int lifts = exercise.lifts(); lifts != 0; lifts &= lifts - 1) {
      tags.add(Integer.numberOfTrailingZeros(lifts), 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int lift, int exercises) {
    return exercises == 0 && (facts.lifts() & 1 << lift) != 0 ? 1 : 0;
  }

  @Override
  public String subject(SessionFacts facts, int lift) {
    return MainLift.values()[lift].id();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return matches.isEmpty()
        ? "none"
        : English.list(matches.stream().map(MainLiftMissing::name).toList());
  }

  @Override
  public String said(Told told) {
    return "there is no " + name(told.match()) + " of moderate intensity";
  }

  @Override
  public String came(Told told) {
    return said(told) + " any more";
  }

  @Override
  public String went(Told told) {
    return "there is now a " + name(told.match()) + " of moderate intensity";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " main lifts are missing";
  }

  private static String name(Match match) {
    return match
        .subject()
        .flatMap(id -> Identified.find(MainLift.class, id))
        .map(MainLiftMissing::name)
        .orElse("main lift");
  }

  private static String name(MainLift lift) {
    return switch (lift) {
      case KNEE -> "squat, lunge or step-up";
      case HIP -> "hinge or bridge";
      case PUSH -> "push for the chest";
      case PULL -> "pull for the back";
    };
  }
}
