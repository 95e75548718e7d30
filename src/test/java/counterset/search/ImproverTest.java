package counterset.search;

import static counterset.search.Nearby.worth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.catalogue.Catalogues;
import counterset.fixture.GivenPlans;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Superset;
import counterset.timeline.SessionLength;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is made of a given session: never worse, never further away than asked for. */
class ImproverTest {

  private static final Limit QUICK = Limit.of(Effort.QUICK);
  private static final Catalogue SHIPPED = Catalogues.embedded();

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  private static Plan improve(Catalogue catalogue, Plan start, OptionalInt changes) {
    return new Improver(catalogue, "test").improve(start, changes, QUICK);
  }

  /** Any problem, with tracks one time in four, and any session for it, perhaps too long. */
  private static Plan start(int seed) {
    RandomSessions random = new RandomSessions(SHIPPED, seed);
    Problems problems = random.problem();
    Problem problem = (seed % 4 == 0 ? random.withTracks(problems) : problems).problem();
    int fit = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    return GivenPlans.random(problem, SHIPPED, Math.max(1, fit + seed % 4 - 2), seed);
  }

  /** Each number of changes twice. */
  static IntStream fewSeeds() {
    return IntStream.range(0, 14);
  }

  @ParameterizedTest
  @MethodSource("fewSeeds")
  void neverWorseAndNeverFurther(int seed) {
    Plan start = start(seed);
    int fit = SessionLength.supersetsThatFit(start.problem().clock(), start.problem().minutes());
    int most = seed % 7;
    Plan better = improve(SHIPPED, start, OptionalInt.of(most));

    assertThat(worth(better)).as("seed %d", seed).isGreaterThanOrEqualTo(worth(start));
    assertThat(Improver.changed(start, better))
        .as("seed %d", seed)
        .filteredOn(at -> at.superset() <= Math.max(fit, better.session().supersets().size()))
        .hasSizeLessThanOrEqualTo(most);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void oneChangeIsTheBestOfAll(int seed) {
    int perSuperset = 1 + seed % 2;
    Problem problem = Nearby.problem(perSuperset, seed);
    Plan start = GivenPlans.random(problem, Nearby.CATALOGUE, 1 + seed % 3, seed);
    Worth best =
        Nearby.all(start, 1, List.of()).stream().map(Nearby::worth).max(Worth::compareTo).get();

    Plan better = improve(Nearby.CATALOGUE, start, OptionalInt.of(1));
    assertThat(worth(better)).as("seed %d, from %s", seed, worth(start)).isEqualTo(best);
    assertThat(Improver.changed(start, better)).hasSizeLessThanOrEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void twoChangesAreTheBestOfAllInSmallSessions(int seed) {
    Plan start = GivenPlans.random(Nearby.problem(2, seed), Nearby.CATALOGUE, 3, seed);
    Worth best =
        Nearby.all(start, 2, List.of()).stream().map(Nearby::worth).max(Worth::compareTo).get();
    assertThat(worth(improve(Nearby.CATALOGUE, start, OptionalInt.of(2))))
        .as("seed %d, from %s", seed, worth(start))
        .isEqualTo(best);
  }

  @Test
  void moreChangesAreNeverWorse() {
    Plan start = start(3);
    Worth last = worth(start);
    for (int changes = 0; changes <= 6; changes++) {
      Worth next = worth(improve(SHIPPED, start, OptionalInt.of(changes)));
      assertThat(next).as("%d changes", changes).isGreaterThanOrEqualTo(last);
      last = next;
    }
    assertThat(worth(improve(SHIPPED, start, OptionalInt.empty()))).isGreaterThan(worth(start));
  }

  @Test
  void keptExercisesComeBackAndStay() {
    Keep[] keep = {new Keep(new At(1, 0), "e0"), new Keep(new At(2, 0), "e5")};
    Problem problem = new Problems(Nearby.problem(2, 2)).keeping(keep).problem();
    Plan start = GivenPlans.random(problem, Nearby.CATALOGUE, 3, 11);
    for (OptionalInt changes : List.of(OptionalInt.of(6), OptionalInt.empty())) {
      Plan better = improve(Nearby.CATALOGUE, start, changes);
      List<Superset> supersets = better.session().supersets();
      assertThat(supersets.get(0).exercises().get(0).id()).isEqualTo("e0");
      assertThat(supersets.get(1).exercises()).extracting(e -> e.id()).containsExactly("e5", "e5");
      assertThat(improve(Nearby.CATALOGUE, better, OptionalInt.of(1)).session().supersets().get(1))
          .isEqualTo(supersets.get(1));
    }
  }

  @Test
  void emptySupersetsAreFilledOneChangeAtATime() {
    Plan start = GivenPlans.of(Nearby.problem(1, 1), Nearby.CATALOGUE, List.of());
    for (int changes = 0; changes <= 3; changes++) {
      Plan better = improve(Nearby.CATALOGUE, start, OptionalInt.of(changes));
      assertThat(better.session().work().count()).isEqualTo(changes);
      assertThat(Improver.changed(start, better)).hasSize(changes);
    }
  }

  @Test
  void whatTheClockHasNoRoomForIsLeftOffAtTheEnd() {
    Problem problem = Nearby.problem(2, 2);
    Plan start = GivenPlans.random(problem, Nearby.CATALOGUE, 5, 4);
    Plan better = improve(Nearby.CATALOGUE, start, OptionalInt.of(0));
    assertThat(better.session().supersets())
        .isEqualTo(start.session().supersets().subList(0, better.session().supersets().size()))
        .hasSizeLessThan(5);
    assertThat(worth(better)).isGreaterThan(worth(start));
  }

  @Test
  void theSameBytesTwice() {
    Plan start = start(8);
    assertThat(start.problem().tracks()).isNotEmpty();
    for (OptionalInt changes : List.of(OptionalInt.of(2), OptionalInt.of(5), OptionalInt.empty())) {
      assertThat(improve(SHIPPED, start, changes)).isEqualTo(improve(SHIPPED, start, changes));
    }
  }

  @Test
  void stoppedItHandsOutWhatThereIs() {
    Plan start = start(3);
    Improver improver = new Improver(SHIPPED, "test");
    improver.stop();
    Plan better = improver.improve(start, OptionalInt.of(3), QUICK);
    assertThat(worth(better)).isGreaterThanOrEqualTo(worth(start));
    assertThat(better.solver().complete()).isFalse();
    assertThat(better.solver().moves()).isZero();
  }

  @Test
  void fewerChangesThanNoneAreRefused() {
    Plan start = GivenPlans.of(Nearby.problem(1, 1), Nearby.CATALOGUE, List.of());
    assertThatThrownBy(() -> improve(Nearby.CATALOGUE, start, OptionalInt.of(-1)))
        .hasMessageContaining("changes (-1)");
  }

  @Test
  void whatIsExcludedGoes() {
    Problem problem = new Problems(Nearby.problem(2, 3)).excluding("e3").problem();
    Exercise excluded = Nearby.CATALOGUE.exercises().get("e3");
    Plan start = GivenPlans.of(problem, Nearby.CATALOGUE, List.of(List.of(excluded, excluded)));
    assertThat(improve(Nearby.CATALOGUE, start, OptionalInt.of(2)).session().work())
        .doesNotContain(excluded);
  }
}
