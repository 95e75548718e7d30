package counterset.score;

import counterset.model.MainLift;

/** Every {@link MainLift} for a target that the client can do is there; a unit is a main lift. */
public final class MainLiftMissing extends CountConstraint {

  MainLiftMissing() {
    super(
        "mainLiftMissing",
        Level.SOFT,
        12,
        "Every main lift for a target is there: for knee and hip, a push, a pull.",
        "per main lift, of moderate intensity at least, that is possible and missing");
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
}
