package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.FilledWeek;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.fixture.RandomWeeks;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.score.Candidate;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The score that follows the solver says the same as one that looks at the whole draft, whether a
 * move is taken back, made for good, or made and mended.
 */
class DraftScoreTest {

  private static final int DRAFTS = 120;
  private static final int WEEKS = 40;
  private static final int MOVES = 150;

  private final Catalogue catalogue = Catalogues.embedded();
  private final List<Exercise> exercises = catalogue.exercises(Part.MAIN);

  @Test
  void sessions() {
    for (long seed = 1; seed <= DRAFTS; seed++) {
      RandomSessions sessions = new RandomSessions(catalogue, seed);
      follow(task(sessions, sessions.problem(), seed), seed);
    }
  }

  @Test
  void classes() {
    for (long seed = 1; seed <= DRAFTS; seed++) {
      RandomSessions sessions = new RandomSessions(catalogue, seed);
      follow(task(sessions, sessions.withTracks(sessions.problem()), seed), seed);
    }
  }

  @Test
  void weeks() {
    for (long seed = 1; seed <= WEEKS; seed++) {
      FilledWeek week = new RandomWeeks(catalogue, seed).filled();
      List<Task.Day> days = new ArrayList<>();
      for (Lineup session : week.sessions()) {
        days.add(new Task.Day(session, new boolean[session.places().length]));
      }
      follow(new Task(days, Optional.of(week.facts()), Optional.empty()), seed);
    }
  }

  private Task task(RandomSessions sessions, Problems problems, long seed) {
    SessionFacts facts =
        new SessionFacts(problems.problem(), catalogue, exercises, 1 + new Random(seed).nextInt(9));
    Lineup lineup = Lineup.empty(facts);
    List<Exercise> chosen = sessions.places(lineup.places().length, exercises);
    for (int place = 0; place < chosen.size(); place++) {
      Exercise exercise = chosen.get(place);
      lineup.places()[place] =
          exercise == null ? null : facts.candidate(exercise.id()).orElseThrow();
    }
    return Task.of(new Task.Day(lineup, new boolean[lineup.places().length]));
  }

  private static void follow(Task task, long seed) {
    Random random = new Random(seed);
    Draft draft = Draft.of(task);
    DraftScore score = new DraftScore();
    score.resetWorkingSolution(draft);
    for (int i = 0; i < MOVES; i++) {
      Map<Spot, Candidate> before = move(draft, score, random);
      DraftScore afresh = new DraftScore();
      afresh.resetWorkingSolution(draft);
      assertThat(score.calculateScore())
          .as("seed %d, move %d", seed, i)
          .isEqualTo(afresh.calculateScore());
      Map<Spot, Candidate> made = new LinkedHashMap<>();
      before.keySet().forEach(spot -> made.put(spot, spot.getCandidate()));
      before.forEach((spot, candidate) -> put(score, spot, candidate));
      if (random.nextInt(3) == 0) {
        made.forEach((spot, candidate) -> put(score, spot, candidate));
      }
    }
  }

  /** Puts something else into one to five spots; tells what was there. */
  private static Map<Spot, Candidate> move(Draft draft, DraftScore score, Random random) {
    Map<Spot, Candidate> before = new LinkedHashMap<>();
    List<Spot> spots = draft.getSpots();
    for (int i = 1 + random.nextInt(5); i > 0; i--) {
      Spot spot = spots.get(random.nextInt(spots.size()));
      before.putIfAbsent(spot, spot.getCandidate());
      List<Candidate> all = spot.getCandidates();
      put(score, spot, random.nextInt(6) == 0 ? null : all.get(random.nextInt(all.size())));
    }
    return before;
  }

  private static void put(DraftScore score, Spot spot, Candidate candidate) {
    score.beforeVariableChanged(spot, "candidate");
    spot.setCandidate(candidate);
    score.afterVariableChanged(spot, "candidate");
  }
}
