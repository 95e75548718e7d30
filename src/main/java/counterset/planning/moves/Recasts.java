package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.Ranking;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import java.util.List;
import java.util.random.RandomGenerator;

/** Moves that change what the followers of one track do at one place, and nothing else. */
final class Recasts {

  private static final int NEARLY_BEST = 20;

  private final List<Place> places;
  private final List<StandIn> standIns;
  private final Ranking ranking;
  private final RandomGenerator random;

  Recasts(SessionSolution solution, Ranking ranking, RandomGenerator random) {
    this.places = solution.getPlaces();
    this.standIns = solution.getStandIns();
    this.ranking = ranking;
    this.random = random;
  }

  /** Another of the least awkward modifications; null where none is needed or none is left. */
  FillMove one() {
    StandIn standIn = standIns.get(random.nextInt(standIns.size()));
    if (standIn.getCandidate() == null) {
      return null;
    }
    Candidate main = places.get(standIn.getPlace()).getCandidate();
    Ranking.Ranked ranked = ranking.of(main, standIn.getTrack());
    Candidate other =
        ranked.candidates()[random.nextInt(Math.min(NEARLY_BEST, ranked.preferred()))];
    return isOnTrack(other, standIn.getTrack()) ? null : FillMove.of(standIn, other);
  }

  private boolean isOnTrack(Candidate candidate, int track) {
    for (int place = 0; place < places.size(); place++) {
      Candidate main = places.get(place).getCandidate();
      if (main != null) {
        Candidate done =
            main.isUnsuited(track)
                ? standIns.get(track * places.size() + place).getCandidate()
                : main;
        if (done != null && done.root() == candidate.root()) {
          return true;
        }
      }
    }
    return false;
  }
}
