package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** A modification fits the moment; a unit is a point of {@link Candidate#awkwardnessFor}. */
public final class ModificationAwkward extends TrackConstraint implements MatchByMatch {

  ModificationAwkward() {
    super(
        "modificationAwkward",
        points(1),
        "A modification fits the moment: the same muscles and position, and nothing to fetch.",
        "10 per item to fetch, 4 for another position, 15 if it shares no primary muscle group, 4 if it leaves equipment lying",
        "Modifications that do not quite fit the moment");
  }

  @Override
  public int measure(Candidate main, Candidate modification) {
    return modification == null ? 0 : modification.awkwardnessFor(main);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "place");
  }

  @Override
  public String said(Told told) {
    return told.subject() + " does not quite fit the moment of " + told.forAll().exercise();
  }

  @Override
  public String went(Told told) {
    return told.subject() + ", which did not quite fit the moment, goes";
  }

  @Override
  public String total(Total total) {
    return "the modifications fit the moment " + (total.better() ? "better" : "less well");
  }
}
