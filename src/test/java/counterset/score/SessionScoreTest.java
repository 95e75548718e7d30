package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a change would make of a session scores like the session that it leads to. */
class SessionScoreTest {

  private static final int SESSIONS = 300;
  private static final int CHANGES = 150;

  private final Catalogue catalogue = Catalogues.embedded();
  private final List<Exercise> exercises = catalogue.exercises(Part.MAIN);

  /** Half the changes are made, so that the next start from another session. */
  @Test
  void triedOutOrComputedAfreshTheScoreIsTheSame() {
    for (long seed = 1; seed <= SESSIONS; seed++) {
      RandomSessions sessions = new RandomSessions(catalogue, seed);
      Random random = new Random(seed);
      SessionFacts facts =
          new SessionFacts(
              sessions.problem().problem(), catalogue, exercises, 1 + random.nextInt(9));
      Candidate[] places = Lineup.empty(facts).places();
      List<Exercise> chosen = sessions.places(places.length, exercises);
      for (int place = 0; place < places.length; place++) {
        Exercise exercise = chosen.get(place);
        places[place] = exercise == null ? null : facts.candidate(exercise.id()).orElseThrow();
      }
      SessionScore tried = new SessionScore(facts);
      tried.compute(places);
      for (int i = 0; i < CHANGES; i++) {
        Change change =
            random.nextInt(3) == 0 ? reorder(places, random) : refill(facts, places, random);
        tried.tryOut(change);
        int[] score = points(tried);
        change.exchange(places);
        assertThat(score).as("seed %d, change %d", seed, i).containsExactly(afresh(facts, places));
        if (random.nextBoolean()) {
          tried.compute(places);
        } else {
          change.exchange(places);
        }
      }
    }
  }

  /** One to six places anew, with anything or nothing. */
  private static Change refill(SessionFacts facts, Candidate[] places, Random random) {
    Change change = new Change(places.length);
    change.clear(false);
    TreeSet<Integer> touched = new TreeSet<>();
    for (int i = 1 + random.nextInt(6); i > 0; i--) {
      touched.add(random.nextInt(places.length));
    }
    List<Candidate> all = facts.candidates();
    for (int place : touched) {
      boolean both = random.nextInt(3) == 0 && place > 0;
      Candidate other = both ? places[place - 1] : all.get(random.nextInt(all.size()));
      change.put(place, random.nextInt(6) == 0 ? null : other);
    }
    return change;
  }

  /** Two exercises change places; no change if they cannot. */
  private static Change reorder(Candidate[] places, Random random) {
    Change change = new Change(places.length);
    int one = random.nextInt(places.length);
    int other = random.nextInt(places.length);
    boolean single =
        one != other
            && places[one] != null
            && places[other] != null
            && !places[one].unilateral()
            && !places[other].unilateral();
    change.clear(single);
    if (single) {
      change.put(one, places[other]);
      change.put(other, places[one]);
    }
    return change;
  }

  private static int[] afresh(SessionFacts facts, Candidate[] places) {
    SessionScore score = new SessionScore(facts);
    score.compute(places);
    return points(score);
  }

  private static int[] points(SessionScore score) {
    return new int[] {score.hard(), score.medium(), score.soft()};
  }
}
