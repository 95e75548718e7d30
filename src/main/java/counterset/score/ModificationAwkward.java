package counterset.score;

/** A modification fits the moment; a unit is a point of {@link Candidate#awkwardnessFor}. */
public final class ModificationAwkward extends TrackConstraint {

  ModificationAwkward() {
    super(
        "modificationAwkward",
        Level.SOFT,
        1,
        "A modification fits the moment: the same muscles and position, and nothing to fetch.",
        "10 per item to fetch, 4 for another position, 15 if it shares no primary muscle group, 4 if it leaves equipment lying");
  }

  @Override
  public int measure(Candidate main, Candidate modification) {
    return modification == null ? 0 : modification.awkwardnessFor(main);
  }
}
