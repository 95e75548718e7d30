package counterset.score;

/**
 * Every track has a modification beside each exercise that does not suit it; a unit is an exercise
 * without one.
 */
public final class ModificationMissing extends TrackConstraint {

  ModificationMissing() {
    super(
        "modificationMissing",
        Level.HARD,
        1,
        "Every track has a modification beside each exercise that does not suit it.",
        "per track and exercise without one");
  }

  @Override
  public int measure(Candidate main, Candidate modification) {
    return modification == null ? 1 : 0;
  }
}
