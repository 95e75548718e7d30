package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** No modification brings an exercise, nor a variant of it, twice to a track; a unit is a pair. */
public final class TrackRepeated extends TrackConstraint implements MatchByMatch {

  TrackRepeated() {
    super(
        "trackRepeated",
        rule("Maybe show another exercise beside it."),
        "No modification brings an exercise, nor a variant of it, twice to a track.",
        "per track and repeated pair",
        "Repeated on a track");
  }

  @Override
  public boolean isOfPairs() {
    return true;
  }

  @Override
  public int measurePair(Candidate earlier, Candidate later) {
    return earlier.root() == later.root() ? 1 : 0;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "pair");
  }

  @Override
  public String said(Told told) {
    return "the same exercise twice: " + told.exercises();
  }

  @Override
  public String came(Told told) {
    return told.subject() + " comes twice";
  }

  @Override
  public String went(Told told) {
    return told.subject() + " no longer comes twice";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises come twice";
  }
}
