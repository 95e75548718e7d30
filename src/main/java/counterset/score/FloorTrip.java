package counterset.score;

import java.util.List;

/** One goes down to the floor, or gets up from it, once; a unit is a time after the first. */
public final class FloorTrip extends CountConstraint {

  FloorTrip() {
    super(
        "floorTrip",
        Level.SOFT,
        8,
        "One goes down to the floor, or gets up from it, once.",
        "per time after the first");
  }

  private static final int FREE = 1;

  @Override
  public Source source() {
    return Source.STEPS;
  }

  @Override
  public int ofStep(Step step) {
    return step.changesLevel() ? 1 : 0;
  }

  @Override
  public int measure(SessionFacts facts, int tag, int trips) {
    return Math.max(0, trips - FREE);
  }

  @Override
  void list(List<Counted> trips, int units, PairMatches matches) {
    trips.stream().skip(FREE).forEach(trip -> matches.match(1, trip.first(), trip.second()));
  }
}
