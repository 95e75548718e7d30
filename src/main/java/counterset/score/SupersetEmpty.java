package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.Match;
import java.util.List;

/** Every superset that the clock has room for is filled; a unit is a superset with a hole. */
public final class SupersetEmpty extends SupersetConstraint implements MatchByMatch {

  SupersetEmpty() {
    super(
        "supersetEmpty",
        wish("Maybe more equipment, fewer limitations, or fewer exclusions."),
        "Every superset that the clock has room for is filled.",
        "per superset with a hole",
        "Supersets not filled");
  }

  @Override
  void measure(Group superset, Matches matches) {
    if (!superset.isFull()) {
      matches.match(1, 0, Sink.NOWHERE);
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    return "not full, although the clock has room for it";
  }

  @Override
  public String where(Match match) {
    return "Superset " + match.places().get(0).superset();
  }

  @Override
  public String came(Told told) {
    return "superset " + told.superset() + " has a hole";
  }

  @Override
  public String went(Told told) {
    return "superset " + told.superset() + " no longer has a hole";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " supersets have a hole";
  }
}
