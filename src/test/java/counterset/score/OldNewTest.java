package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.RandomSessions;
import counterset.fixture.RandomWeeks;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.planning.*;
import counterset.planning.scoring.SearchScore;
import java.util.*;
import org.junit.jupiter.api.Test;

class OldNewTest {
  private final Catalogue catalogue = Catalogues.embedded();

  @Test
  void sessions() {
    List<Exercise> exercises = catalogue.exercises(Part.MAIN);
    for (long seed = 1; seed <= 1000; seed++) {
      RandomSessions sessions = new RandomSessions(catalogue, seed);
      var problems = sessions.problem();
      Problem problem = (seed % 3 == 0 ? sessions.withTracks(problems) : problems).problem();
      SessionFacts facts =
          new SessionFacts(problem, catalogue, exercises, 1 + new Random(seed).nextInt(9));
      SessionSolution solution = SessionSolutions.empty(facts, Map.of());
      List<Exercise> chosen = sessions.places(solution.getPlaces().size(), exercises);
      for (Place place : solution.getPlaces()) {
        Exercise exercise = chosen.get(place.getIndex());
        place.setCandidate(exercise == null ? null : facts.candidate(exercise.id()).orElseThrow());
      }
      Random random = new Random(seed);
      Ranking ranking = new Ranking(facts);
      for (StandIn standIn : solution.getStandIns()) {
        Candidate main = solution.getPlaces().get(standIn.getPlace()).getCandidate();
        Candidate[] valid =
            main == null ? new Candidate[0] : ranking.of(main, standIn.getTrack()).candidates();
        int dice = random.nextInt(10);
        if (dice < 2) standIn.setCandidate(null);
        else if (dice < 4 || valid.length == 0)
          standIn.setCandidate(facts.candidates().get(random.nextInt(facts.candidates().size())));
        else standIn.setCandidate(valid[random.nextInt(Math.min(valid.length, 8))]);
      }
      Candidate[] places =
          solution.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
      Candidate[] standIns =
          solution.getStandIns().stream().map(StandIn::getCandidate).toArray(Candidate[]::new);
      List<String> old = new ArrayList<>();
      for (var e : counterset.planning.scoring.Ledger.of(solution)) {
        old.add(
            e.constraint().id()
                + " "
                + e.amount()
                + " "
                + e.first()
                + " "
                + e.second()
                + " "
                + e.track());
      }
      List<String> now = new ArrayList<>();
      for (var e : Ledger.of(facts, places, standIns)) {
        now.add(
            e.constraint().id()
                + " "
                + e.amount()
                + " "
                + e.first()
                + " "
                + e.second()
                + " "
                + e.track());
      }
      Comparator<String> id = Comparator.comparing(x -> x.split(" ")[0]);
      old.sort(id);
      now.sort(id);
      assertThat(now).as("seed %d", seed).isEqualTo(old);
      SearchScore a = new SearchScore(facts);
      a.compute(places);
      SessionScore b = new SessionScore(facts);
      b.compute(places);
      assertThat(List.of(b.hard(), b.medium(), b.soft()))
          .as("seed %d", seed)
          .isEqualTo(List.of(a.hard(), a.medium(), a.soft()));
      counterset.planning.scoring.TrackScore ta = new counterset.planning.scoring.TrackScore(facts);
      ta.compute(places, standIns);
      TrackScore tb = new TrackScore(facts);
      tb.compute(places, standIns);
      assertThat(List.of(tb.hard(), tb.medium(), tb.soft()))
          .as("tracks seed %d", seed)
          .isEqualTo(List.of(ta.hard(), ta.medium(), ta.soft()));
      for (int i = 0; i < 60; i++) {
        Change change = new Change(places.length);
        boolean reorder = random.nextBoolean();
        change.clear(reorder);
        if (reorder) {
          int x = random.nextInt(places.length), y = random.nextInt(places.length);
          if (x == y) continue;
          change.put(x, places[y]);
          change.put(y, places[x]);
        } else {
          TreeSet<Integer> touched = new TreeSet<>();
          for (int k = 1 + random.nextInt(4); k > 0; k--)
            touched.add(random.nextInt(places.length));
          for (int p : touched)
            change.put(
                p,
                random.nextInt(6) == 0
                    ? null
                    : facts.candidates().get(random.nextInt(facts.candidates().size())));
        }
        b.tryOut(change);
        a.tryOut(change);
        assertThat(List.of(b.hard(), b.medium(), b.soft()))
            .as("tried seed %d", seed)
            .isEqualTo(List.of(a.hard(), a.medium(), a.soft()));
        if (random.nextBoolean()) {
          change.exchange(places);
          a.compute(places);
          b.compute(places);
        }
      }
    }
  }

  @Test
  void weeks() {
    for (long seed = 1; seed <= 400; seed++) {
      WeekSolution week = new RandomWeeks(catalogue, seed).solution();
      List<Candidate[]> places =
          week.getFacts().days().stream()
              .map(
                  day ->
                      week.getPlaces().stream()
                          .filter(p -> p.getDay() == day)
                          .map(WeekPlace::getCandidate)
                          .toArray(Candidate[]::new))
              .toList();
      List<String> old = new ArrayList<>();
      counterset.planning.scoring.WeekLedger.of(week)
          .forEach(e -> old.add(e.constraint().id() + e.amount() + e.sessions() + e.subject()));
      List<String> now = new ArrayList<>();
      WeekLedger.of(week.getFacts(), places)
          .forEach(e -> now.add(e.constraint().id() + e.amount() + e.sessions() + e.subject()));
      Collections.sort(old);
      Collections.sort(now);
      assertThat(now).as("seed " + seed).isEqualTo(old);
      var a = new counterset.planning.scoring.WeekScore(week.getFacts());
      var b = new WeekScore(week.getFacts());
      for (WeekDay day : week.getFacts().days()) {
        a.add(day, places.get(day.index()));
        b.add(day, places.get(day.index()));
      }
      assertThat(List.of(b.hard(), b.medium(), b.soft()))
          .as("seed %d", seed)
          .isEqualTo(List.of(a.hard(), a.medium(), a.soft()));
    }
  }

  @Test
  void speed() {
    List<Exercise> exercises = catalogue.exercises(Part.MAIN);
    RandomSessions sessions = new RandomSessions(catalogue, 5);
    Problem problem =
        counterset.fixture.Problems.of(catalogue, counterset.model.Region.LOWER)
            .owning(counterset.fixture.Problems.two("dumbbell"))
            .problem();
    SessionFacts facts = new SessionFacts(problem, catalogue, exercises, 8);
    Random random = new Random(1);
    Candidate[] places = new Candidate[16];
    for (int i = 0; i < 16; i++)
      places[i] = facts.candidates().get(random.nextInt(facts.candidates().size()));
    SearchScore a = new SearchScore(facts);
    SessionScore b = new SessionScore(facts);
    a.compute(places);
    b.compute(places);
    Change[] changes = new Change[1000];
    for (int i = 0; i < 1000; i++) {
      changes[i] = new Change(16);
      changes[i].clear(false);
      int p = random.nextInt(16);
      changes[i].put(p, facts.candidates().get(random.nextInt(facts.candidates().size())));
    }
    for (int round = 0; round < 6; round++) {
      long t = System.nanoTime();
      for (int i = 0; i < 400_000; i++) a.tryOut(changes[i % 1000]);
      long t2 = System.nanoTime();
      for (int i = 0; i < 400_000; i++) b.tryOut(changes[i % 1000]);
      long t3 = System.nanoTime();
      for (int i = 0; i < 100_000; i++) a.compute(places);
      long t4 = System.nanoTime();
      for (int i = 0; i < 100_000; i++) b.compute(places);
      long t5 = System.nanoTime();
      System.out.printf(
          "try old %d new %d ns; compute old %d new %d ns%n",
          (t2 - t) / 400_000, (t3 - t2) / 400_000, (t4 - t3) / 100_000, (t5 - t4) / 100_000);
    }
  }
}
