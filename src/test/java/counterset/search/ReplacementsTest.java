package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.fixture.Problems;
import counterset.fixture.RandomClasses;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReplacementsTest {

  private static final int PLANS = 60;
  private static final int TAKEN = 6;

  private final Replacements replacements = new Replacements(Plans.CATALOGUE, "test");

  @Test
  void thePredictedScoreIsTheScoreAfter() {
    int taken = 0;
    for (long seed = 1; seed <= PLANS; seed++) {
      taken += take(RandomPlans.of(seed), "hand-written session, seed " + seed, seed);
      taken += take(RandomClasses.of(Plans.CATALOGUE, seed), "random class, seed " + seed, seed);
    }
    assertThat(taken).isGreaterThan(PLANS * TAKEN);
  }

  @Test
  void thePredictedScoreOfAGoodPlanIsTheScoreAfter() {
    for (Plan plan : List.of(Plans.legs(), Plans.upperRounds(), ClassPlans.good())) {
      for (long seed = 1; seed <= 10; seed++) {
        assertThat(take(plan, plan.problem().title() + ", seed " + seed, seed)).isPositive();
      }
    }
  }

  /** Takes a few of the replacements at a random place. */
  private int take(Plan plan, String name, long seed) {
    Random random = new Random(seed);
    List<At> places = new ArrayList<>(places(plan));
    places.addAll(holes(plan));
    if (places.isEmpty()) {
      return 0;
    }
    At at = places.get(random.nextInt(places.size()));
    List<Replacement> all = replacements.of(plan, at);
    for (int i = 0; i < Math.min(TAKEN, all.size()); i++) {
      Replacement chosen = all.get(i < 2 ? i : random.nextInt(all.size()));
      Plan after = replacements.plan(plan, chosen);
      assertThat(List.of(after.score().hard(), after.score().medium(), after.score().soft()))
          .as("%s, %s at %s", name, chosen.exercise().id(), at)
          .containsExactly(chosen.hard(), chosen.medium(), chosen.soft());
      assertThat(changed(plan, after))
          .as("%s, %s at %s", name, chosen.exercise().id(), at)
          .isSubsetOf(chosen.places());
      assertThat(standing(after, at)).contains(chosen.exercise());
    }
    return Math.min(TAKEN, all.size());
  }

  @Test
  void theBestComesFirstAndNothingThatIsThereAlready() {
    Plan plan = Plans.legs();
    At at = new At(1, 1);
    List<Replacement> all = replacements.of(plan, at);
    assertThat(all).hasSizeGreaterThan(20);
    for (int i = 1; i < all.size(); i++) {
      Replacement better = all.get(i - 1);
      Replacement worse = all.get(i);
      assertThat(new Worth(better.hard(), better.medium(), better.soft()))
          .isGreaterThanOrEqualTo(new Worth(worse.hard(), worse.medium(), worse.soft()));
    }
    Set<String> roots = new HashSet<>();
    plan.session().work().forEach(exercise -> roots.add(exercise.root()));
    roots.remove(standing(plan, at).orElseThrow().root());
    assertThat(all)
        .filteredOn(replacement -> replacement.places().size() == 1)
        .extracting(replacement -> replacement.exercise().root())
        .doesNotContainAnyElementsOf(roots);
    assertThat(all)
        .extracting(Replacement::exercise)
        .doesNotHaveDuplicates()
        .doesNotContain(standing(plan, at).orElseThrow());
  }

  @Test
  void aOneSidedExerciseTakesBothPlaces() {
    Plan plan = Plans.legs();
    Replacement oneSided =
        replacements.of(plan, new At(1, 1)).stream()
            .filter(replacement -> replacement.exercise().isUnilateral())
            .findFirst()
            .orElseThrow();
    assertThat(oneSided.places()).containsExactly(new At(1, 0), new At(1, 1));
    assertThat(oneSided.partner()).isEmpty();
    assertThat(oneSided.session().supersets().get(0).isUnilateral()).isTrue();
    assertThat(oneSided.session().supersets().subList(1, 8))
        .isEqualTo(plan.session().supersets().subList(1, 8));
  }

  @Test
  void whereAOneSidedExerciseLeavesTheOtherPlaceGetsTheBestPartner() {
    Plan plan = Plans.legs();
    Replacement pair =
        replacements.of(plan, new At(2, 1)).stream()
            .filter(replacement -> !replacement.exercise().isUnilateral())
            .findFirst()
            .orElseThrow();
    Exercise partner = pair.partner().orElseThrow();
    Superset superset = pair.session().supersets().get(1);
    assertThat(superset.exercises()).containsExactly(partner, pair.exercise());
    Plan after = replacements.plan(plan, pair);
    assertThat(replacements.of(after, new At(2, 0)))
        .filteredOn(other -> !other.exercise().isUnilateral())
        .allSatisfy(
            other ->
                assertThat(new Worth(other.hard(), other.medium(), other.soft()))
                    .isLessThanOrEqualTo(new Worth(pair.hard(), pair.medium(), pair.soft())));
  }

  @Test
  void theFollowersOfATrackGetAModificationWhereTheNewExerciseDoesNotSuitThem() {
    Plan plan = ClassPlans.good();
    for (Replacement replacement : replacements.of(plan, new At(1, 0))) {
      if (replacement.hard() == 0) {
        Plan after = replacements.plan(plan, replacement);
        assertThat(after.matches())
            .extracting(match -> match.constraint())
            .doesNotContain("modificationMissing", "trackRepeated");
      }
    }
  }

  @Test
  void aChosenWarmUpFollowsTheSupersetsAndOneWrittenByHandStays() {
    Problems problems = new Problems(Plans.legs().problem());
    Plan planned =
        new SessionPlanner(Plans.CATALOGUE, "test")
            .plan(problems.problem(), Limit.of(Effort.QUICK));
    At at = new At(1, 0);
    Replacement first = replacements.of(planned, at).get(0);
    assertThat(replacements.plan(planned, first).session().warmUp())
        .isEqualTo(
            new Surroundings(planned.problem(), Plans.CATALOGUE)
                .around(first.session().supersets())
                .warmUp());
    Plan byHand = ClassPlans.warmUp("warm-march", "warm-march");
    Replacement other = replacements.of(byHand, at).get(0);
    assertThat(replacements.plan(byHand, other).session().warmUp())
        .isEqualTo(byHand.session().warmUp());
  }

  @Test
  void whatIsKeptIsNotPushedOutWithoutBreakingARule() {
    Plan legs = Plans.legs();
    Keep keep = new Keep(new At(1, 0), "goblet-squat");
    Plan plan =
        new SessionPlanner(Plans.CATALOGUE, "test")
            .score(legs.problem().keeping(List.of(keep)), legs.session(), legs.solver());
    assertThat(plan.score().hard()).isZero();
    for (Replacement replacement : replacements.of(plan, new At(1, 1))) {
      if (replacement.exercise().isUnilateral()) {
        assertThat(replacement.hard()).as(replacement.exercise().id()).isNegative();
        assertThat(replacements.plan(plan, replacement).matches())
            .extracting(match -> match.constraint())
            .contains("keptMoved");
      }
      assertThat(replacements.plan(plan, replacement).score().hard()).isEqualTo(replacement.hard());
    }
  }

  @Test
  void thereMustBeSuchAPlace() {
    Plan plan = Plans.legs();
    for (At at : List.of(new At(9, 0), new At(1, 2))) {
      assertThatThrownBy(() -> replacements.of(plan, at))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(at.toString());
    }
  }

  private static List<At> places(Plan plan) {
    return plan.session().supersets().stream()
        .flatMap(
            superset ->
                IntStream.range(0, superset.exercises().size())
                    .mapToObj(position -> new At(superset.number(), position)))
        .toList();
  }

  /** The first empty place of each superset that has one. */
  private static List<At> holes(Plan plan) {
    return plan.session().supersets().stream()
        .filter(s -> s.exercises().size() < plan.problem().clock().perSuperset())
        .map(superset -> new At(superset.number(), superset.exercises().size()))
        .toList();
  }

  private static List<At> changed(Plan before, Plan after) {
    assertThat(after.session().supersets()).hasSameSizeAs(before.session().supersets());
    return Stream.concat(places(before).stream(), places(after).stream())
        .distinct()
        .filter(at -> !standing(before, at).equals(standing(after, at)))
        .toList();
  }

  private static Optional<Exercise> standing(Plan plan, At at) {
    return plan.session().supersets().get(at.superset() - 1).exercises().stream()
        .skip(at.position())
        .findFirst();
  }
}
