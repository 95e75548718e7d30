package counterset.search;

import counterset.score.Candidate;
import counterset.score.Lineup;

/** Gives a session the modifications that it asks for. */
final class Casting {

  private Casting() {}

  /** The same exercises, with the least awkward modifications beside them that can be. */
  static Lineup of(Lineup lineup) {
    if (lineup.facts().tracks() == 0) {
      return lineup;
    }
    Lineup cast = lineup.copy();
    new Cast(lineup.facts(), new Ranking(lineup.facts()))
        .choose(
            lineup.places(),
            new Candidate[lineup.standIns().length],
            lineup.places(),
            cast.standIns());
    return cast;
  }
}
