package counterset.score;

/** No modification brings an exercise, nor a variant of it, twice to a track; a unit is a pair. */
public final class TrackRepeated extends TrackConstraint {

  TrackRepeated() {
    super(
        "trackRepeated",
        Level.HARD,
        1,
        "No modification brings an exercise, nor a variant of it, twice to a track.",
        "per track and repeated pair");
  }

  @Override
  public int measurePair(Candidate earlier, Candidate later) {
    return earlier.root() == later.root() ? 1 : 0;
  }
}
