package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.Keep;
import counterset.model.Match;
import java.util.List;
import java.util.Optional;

/** Exercises that the coach keeps stay where they are; a unit is a place. */
public final class KeptMoved extends SessionConstraint implements MatchByMatch {

  KeptMoved() {
    super(
        "keptMoved",
        rule("Maybe put it back, or keep it no longer."),
        "Exercises that the coach keeps stay where they are.",
        "per kept place that changed",
        "Kept places that changed");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return !facts.problem().keep().isEmpty();
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    for (Keep keep : facts.problem().keep()) {
      int place = (keep.at().superset() - 1) * facts.perSuperset() + keep.at().position();
      boolean there = place < places.length && places[place] != null;
      if (!there || !places[place].exercise().id().equals(keep.exercise())) {
        matches.match(1, place < places.length ? place : Sink.NOWHERE, keep.exercise());
      }
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    Match match = told.match();
    String at =
        told.own().problem().keep().stream()
            .filter(keep -> Optional.of(keep.exercise()).equals(match.subject()))
            .filter(keep -> match.places().isEmpty() || match.places().contains(keep.at()))
            .map(keep -> " at " + keep.at())
            .findFirst()
            .orElse("");
    String now = told.exercises();
    String instead = now.isEmpty() ? "the place is empty" : now + " stands there";
    return told.subject() + " is kept" + at + ", and " + instead;
  }

  @Override
  public String came(Told told) {
    return told.subject() + " is no longer where it is kept";
  }

  @Override
  public String went(Told told) {
    return told.subject() + " is where it is kept";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " kept places have changed";
  }
}
