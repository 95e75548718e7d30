package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** The session ends within its minutes; a unit is a second over the cap. */
public final class ClockOverrun extends SessionConstraint {

  ClockOverrun() {
    super(
        "clockOverrun",
        rule("Maybe drop a superset, shorten the intervals, or raise the minutes."),
        "The session ends within its minutes.",
        "per second over the cap",
        "Over the cap");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.overrunSeconds() > 0;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    if (facts.overrunSeconds() > 0) {
      matches.match(facts.overrunSeconds(), Sink.NOWHERE, null);
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return amount + " s";
  }

  @Override
  public String said(Told told) {
    String minutes = English.count(told.own().problem().minutes(), "minute");
    return "All places filled, the session takes " + told.amount() + " s more than " + minutes;
  }

  @Override
  public String total(Total total) {
    return "the session is " + total.amount() + " s " + total.less() + " over the cap";
  }
}
