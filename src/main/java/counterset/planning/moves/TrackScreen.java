package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Cast;
import counterset.planning.Ranking;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import counterset.planning.scoring.TrackScore;
import java.util.Arrays;
import java.util.List;

/** Chooses the stand-ins that a move asks for, and scores the tracks with them. */
final class TrackScreen {

  private final TrackScore score;
  private final Cast cast;
  private final Candidate[] before;
  private final Candidate[] old;
  private final Candidate[] chosen;
  private List<StandIn> standIns;
  private int softBefore;

  TrackScreen(SessionFacts facts, Ranking ranking) {
    int places = facts.supersets() * facts.perSuperset();
    score = new TrackScore(facts);
    cast = new Cast(facts, ranking);
    before = new Candidate[places];
    old = new Candidate[places * facts.tracks()];
    chosen = new Candidate[old.length];
  }

  /** Takes note of the solution that the next moves start from. */
  void look(SessionSolution solution, Candidate[] places) {
    standIns = solution.getStandIns();
    for (int i = 0; i < old.length; i++) {
      old[i] = standIns.get(i).getCandidate();
    }
    System.arraycopy(places, 0, before, 0, before.length);
    score.compute(before, old);
    softBefore = score.soft();
  }

  /** Scores the tracks after a move of stand-ins only. */
  void compute(FillMove move) {
    System.arraycopy(old, 0, chosen, 0, old.length);
    move.applyToStandIns(chosen);
    score.compute(before, chosen);
  }

  /**
   * Completes a move and scores the tracks after it.
   *
   * @param places the candidates by place after the move
   */
  FillMove cast(FillMove move, Candidate[] places) {
    cast.choose(before, old, places, chosen);
    score.compute(places, chosen);
    int count = 0;
    StandIn[] changed = new StandIn[chosen.length];
    Candidate[] modifications = new Candidate[chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i] != old[i]) {
        changed[count] = standIns.get(i);
        modifications[count++] = chosen[i];
      }
    }
    return count == 0
        ? move
        : move.with(Arrays.copyOf(changed, count), Arrays.copyOf(modifications, count));
  }

  int hard() {
    return score.hard();
  }

  int medium() {
    return score.medium();
  }

  int soft() {
    return score.soft();
  }

  /** Soft points of the tracks in the solution that moves start from. */
  int softBefore() {
    return softBefore;
  }
}
