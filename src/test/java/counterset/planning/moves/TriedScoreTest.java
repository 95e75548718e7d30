package counterset.planning.moves;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.scoring.SearchScore;
import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a change would make of a session scores like the session that it leads to. */
class TriedScoreTest {

  private static final int SESSIONS = 300;
  private static final int CHANGES = 100;

  private final Catalogue catalogue = Catalogues.embedded();
  private final List<Exercise> exercises = catalogue.exercises(Part.MAIN);

  @Test
  void triedOutOrComputedAfreshTheScoreIsTheSame() {
    int changes = 0;
    for (long seed = 1; seed <= SESSIONS; seed++) {
      changes += follow(seed);
    }
    assertThat(changes).isGreaterThan(SESSIONS * CHANGES / 4);
  }

  /** Half the changes are made, so that the next start from another session. */
  private int follow(long seed) {
    RandomSessions sessions = new RandomSessions(catalogue, seed);
    SessionFacts facts =
        new SessionFacts(
            sessions.problem().problem(), catalogue, exercises, 1 + new Random(seed).nextInt(9));
    SessionSolution solution = SessionSolutions.empty(facts, Map.of());
    List<Exercise> chosen = sessions.places(solution.getPlaces().size(), exercises);
    for (Place place : solution.getPlaces()) {
      Exercise exercise = chosen.get(place.getIndex());
      place.setCandidate(exercise == null ? null : facts.candidate(exercise.id()).orElseThrow());
    }
    Lineup lineup = new Lineup(solution);
    Dice dice = new Dice(seed);
    Proposals proposals = new Proposals(lineup, Pool.of(facts), dice);
    Change change = new Change(lineup.size());
    SearchScore tried = new SearchScore(facts);
    tried.compute(lineup.candidates());
    int changes = 0;
    for (int i = 0; i < CHANGES; i++) {
      if (!proposals.next(change)) {
        continue;
      }
      changes++;
      tried.tryOut(change);
      List<Integer> score = List.of(tried.hard(), tried.medium(), tried.soft());
      lineup.make(change);
      assertThat(score).as("seed %d, change %d", seed, i).isEqualTo(afresh(facts, lineup));
      if (dice.nextInt(2) == 0) {
        tried.compute(lineup.candidates());
      } else {
        lineup.make(change);
      }
    }
    return changes;
  }

  private static List<Integer> afresh(SessionFacts facts, Lineup lineup) {
    Candidate[] places = lineup.candidates();
    SearchScore score = new SearchScore(facts);
    score.compute(places);
    return List.of(score.hard(), score.medium(), score.soft());
  }
}
