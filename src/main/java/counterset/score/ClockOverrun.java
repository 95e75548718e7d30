package counterset.score;

/** The session ends within its minutes; a unit is a second over the cap. */
public final class ClockOverrun extends SessionConstraint {

  ClockOverrun() {
    super(
        "clockOverrun",
        Level.HARD,
        1,
        "The session ends within its minutes.",
        "per second over the cap");
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
}
