package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.scoring.SearchScore;
import java.util.List;

/**
 * Tells which moves are worth the solver's time: those that break no further rule or wish and cost
 * few points.
 *
 * <p>Most random moves are hopeless, and scoring one here costs a fraction of what the solver
 * spends on it. The allowance is several times the starting temperature, so that hardly a move is
 * lost that annealing would have accepted.
 */
final class Screen {

  private static final int ALLOWANCE = 25;

  private final SearchScore score;
  private final Candidate[] now;
  private final TrackScreen tracks;
  private int hard;
  private int medium;
  private int soft;

  /**
   * A screen.
   *
   * @param tracks null if there are no tracks
   */
  Screen(SearchScore score, int places, TrackScreen tracks) {
    this.score = score;
    this.now = new Candidate[places];
    this.tracks = tracks;
  }

  /** Takes note of the solution that the next moves start from. */
  void look(SessionSolution solution) {
    List<Place> places = solution.getPlaces();
    for (int i = 0; i < now.length; i++) {
      now[i] = places.get(i).getCandidate();
    }
    score.compute(now);
    hard = score.hard();
    medium = score.medium();
    soft = score.soft();
    if (tracks != null) {
      tracks.look(solution, now);
      hard += tracks.hard();
      medium += tracks.medium();
      soft += tracks.soft();
    }
  }

  /** The move as it should be made, with the stand-ins that it asks for; null if it is hopeless. */
  FillMove promising(FillMove move) {
    if (tracks == null) {
      move.apply(now);
      score.compute(now);
      move.revert(now);
      return isPromising(0, 0, 0) ? move : null;
    }
    if (move.isOfStandInsOnly()) {
      score.compute(now);
      tracks.compute(move);
      return isPromising(tracks.hard(), tracks.medium(), tracks.soft()) ? move : null;
    }
    move.apply(now);
    score.compute(now);
    FillMove cast = null;
    // The tracks only take points away, so what fails without them need not be cast.
    if (isPromising(0, 0, tracks.softBefore())) {
      cast = tracks.cast(move, now);
      cast = isPromising(tracks.hard(), tracks.medium(), tracks.soft()) ? cast : null;
    }
    move.revert(now);
    return cast;
  }

  /** The move with the stand-ins that it asks for, hopeless or not. */
  FillMove anyway(FillMove move) {
    if (tracks == null || move.isOfStandInsOnly()) {
      return move;
    }
    move.apply(now);
    FillMove cast = tracks.cast(move, now);
    move.revert(now);
    return cast;
  }

  private boolean isPromising(int moreHard, int moreMedium, int moreSoft) {
    int newHard = score.hard() + moreHard;
    int newMedium = score.medium() + moreMedium;
    if (newHard != hard) {
      return newHard > hard;
    }
    return newMedium != medium ? newMedium > medium : score.soft() + moreSoft >= soft - ALLOWANCE;
  }
}
