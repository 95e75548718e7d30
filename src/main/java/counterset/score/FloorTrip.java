package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** One goes down to the floor once; a unit is a time after the first. */
public final class FloorTrip extends CountConstraint {

  FloorTrip() {
    super(
        "floorTrip",
        points(22),
        "One goes down to the floor once.",
        "per time after the first",
        "Down to the floor again");
  }

  private static final int FREE = 1;

  @Override
  public Source source() {
    return Source.STEPS;
  }

  @Override
  public int ofStep(Step step) {
    return step.goesDown() ? 1 : 0;
  }

  @Override
  public int measure(SessionFacts facts, int tag, int trips) {
    return Math.max(0, trips - FREE);
  }

  @Override
  void list(List<Counted> trips, int units, PairMatches matches) {
    trips.stream().skip(FREE).forEach(trip -> matches.match(1, trip.first(), trip.second()));
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "time");
  }

  @Override
  public String said(Told told) {
    return "once more down to the floor";
  }

  @Override
  public String total(Total total) {
    String trips = total.amount() == 1 ? " trip" : " trips";
    return English.number(total.amount()) + trips + " to the floor " + total.less();
  }
}
