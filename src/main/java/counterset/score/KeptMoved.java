package counterset.score;

import counterset.model.Keep;

/** Exercises that the coach keeps stay where they are; a unit is a place. */
public final class KeptMoved extends SessionConstraint {

  KeptMoved() {
    super(
        "keptMoved",
        Level.HARD,
        1,
        "Exercises that the coach keeps stay where they are.",
        "per kept place that changed");
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
}
