package counterset.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every session, however odd. */
class TimelinePropertiesTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();
  private static final List<Exercise> EXERCISES = CATALOGUE.exercises(Part.MAIN);

  /** A problem with a session of as many full supersets as fit. */
  record Case(long seed, Problem problem, Session session) {

    static Case of(long seed) {
      RandomSessions random = new RandomSessions(CATALOGUE, seed);
      Problem problem = random.problem().problem();
      Intervals clock = problem.clock();
      int supersets = SessionLength.supersetsThatFit(clock, problem.minutes());
      List<Exercise> places =
          new ArrayList<>(random.places(supersets * clock.perSuperset(), EXERCISES));
      places.replaceAll(exercise -> Objects.requireNonNullElse(exercise, EXERCISES.get(0)));
      List<Superset> filled = new ArrayList<>();
      for (int i = 0; i < supersets; i++) {
        filled.add(
            new Superset(
                i + 1, places.subList(i * clock.perSuperset(), (i + 1) * clock.perSuperset())));
      }
      return new Case(seed, problem, new Session(List.of(), filled, List.of()));
    }

    Timeline timeline() {
      return Timeline.of(session, problem.clock(), problem.minutes(), CATALOGUE);
    }

    int steps() {
      return session.supersets().size() * problem.clock().perSuperset() * problem.clock().rounds();
    }
  }

  @Provide
  static Arbitrary<Case> cases() {
    return Arbitraries.longs().map(Case::of);
  }

  @Property(tries = 300)
  void intervalsAreContiguousFromZero(@ForAll("cases") Case c) {
    int now = 0;
    for (Interval interval : c.timeline().intervals()) {
      assertThat(interval.start()).isEqualTo(now);
      now = interval.end();
    }
    assertThat(c.timeline().end()).isEqualTo(now);
  }

  @Property(tries = 300)
  void theCapIsKeptAndEverySecondIsAccountedFor(@ForAll("cases") Case c) {
    Timeline timeline = c.timeline();
    if (!c.session().supersets().isEmpty()) {
      assertThat(timeline.end()).isLessThanOrEqualTo(60 * c.problem().minutes());
      assertThat(timeline.unused()).isNotNegative();
    }
    assertThat(timeline.end() + timeline.unused()).isEqualTo(60 * c.problem().minutes());
    assertThat(timeline.intervals().stream().mapToInt(Interval::seconds).sum())
        .isEqualTo(timeline.end());
  }

  @Property(tries = 300)
  void aFullSessionTakesWhatTheFormulaSays(@ForAll("cases") Case c) {
    int formula = SessionLength.seconds(c.problem().clock(), c.session().supersets().size());
    assertThat(Timeline.plainSeconds(c.session(), c.problem().clock())).isEqualTo(formula);
  }

  @Property(tries = 300)
  void onlyRestsGrowAndByFifteenSecondsAtMost(@ForAll("cases") Case c) {
    Intervals clock = c.problem().clock();
    for (Interval interval : c.timeline().intervals()) {
      switch (interval.kind()) {
        case WORK -> assertThat(interval.seconds()).isEqualTo(clock.work());
        case SWITCH -> assertThat(interval.seconds()).isEqualTo(clock.between());
        case REST -> assertThat(interval.seconds()).isBetween(clock.rest(), clock.rest() + 15);
        default ->
            assertThat(Set.of(IntervalKind.GET_READY, IntervalKind.WARM_UP))
                .contains(interval.kind());
      }
    }
  }

  @Property(tries = 300)
  void secondsAreUnusedOnlyWhenNoRestCanTakeThem(@ForAll("cases") Case c) {
    Timeline timeline = c.timeline();
    if (timeline.unused() > 0) {
      assertThat(timeline.intervals())
          .filteredOn(interval -> interval.kind() == IntervalKind.REST)
          .allMatch(interval -> interval.seconds() == c.problem().clock().rest() + 15);
    }
  }

  @Property(tries = 300)
  void longerChangeoversNeverGetShorterRests(@ForAll("cases") Case c) {
    Timeline timeline = c.timeline();
    List<Interval> rests =
        timeline.intervals().stream().filter(i -> i.kind() == IntervalKind.REST).toList();
    List<Integer> seconds =
        timeline.changeovers().stream()
            .filter(
                changeover ->
                    changeover.after().position() == c.problem().clock().perSuperset() - 1)
            .map(changeover -> changeover.seconds())
            .toList();
    assertThat(rests).hasSameSizeAs(seconds);
    for (int i = 0; i < rests.size(); i++) {
      for (int j = 0; j < rests.size(); j++) {
        if (seconds.get(i) > seconds.get(j)) {
          assertThat(rests.get(i).seconds()).isGreaterThanOrEqualTo(rests.get(j).seconds());
        }
      }
    }
  }

  @Property(tries = 300)
  void thereIsAChangeoverBetweenEveryTwoWorkIntervals(@ForAll("cases") Case c) {
    Timeline timeline = c.timeline();
    assertThat(timeline.intervals())
        .filteredOn(i -> i.kind() == IntervalKind.WORK)
        .hasSize(c.steps());
    assertThat(timeline.changeovers()).hasSize(Math.max(0, c.steps() - 1));
  }
}
