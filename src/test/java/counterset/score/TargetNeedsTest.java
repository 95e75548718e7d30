package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Region;
import counterset.model.Target;
import org.junit.jupiter.api.Test;

/** How many sets a target needs, and what gives it how much; in quarter sets. */
class TargetNeedsTest {

  private final Exercise direct = plain("direct");
  private final Exercise helps =
      exercise("helps").withPrimary("hamstrings").withSecondary("quadriceps", "calves").build();
  private final Exercise easy = exercise("easy").withIntensity(1).build();
  private final Exercise easyHelps =
      exercise("easy-helps")
          .withPrimary("hamstrings")
          .withSecondary("quadriceps")
          .withIntensity(1)
          .build();

  private static SessionBuilder named(int minSets) {
    return session().asked(p -> p.targets(new Target("quadriceps", 1, minSets)));
  }

  private static SessionBuilder legs() {
    Target[] all = Problems.of(Trade.of(), Region.LOWER).problem().targets().toArray(Target[]::new);
    return session().asked(p -> p.targets(all));
  }

  private static SessionFacts facts(SessionBuilder session, Exercise... exercises) {
    return session.candidates(exercises).superset().lineup().facts();
  }

  private static int credit(SessionFacts facts, Exercise exercise) {
    return facts.needs().credit(facts.candidate(exercise.id()).orElseThrow(), 0);
  }

  @Test
  void aMuscleGroupByItsNameNeedsDirectSets() {
    assertThat(facts(named(1), direct).needs().of(0)).isEqualTo(4);
    assertThat(facts(named(2), direct).needs().of(0)).isEqualTo(8);
    assertThat(facts(named(0), direct).needs().of(0)).isZero();
    assertThat(facts(named(1)).needs().of(0)).as("nothing trains it").isEqualTo(4);
  }

  @Test
  void aGroupThatCameWithARegionNeedsASetASmallOneHalf() {
    TargetNeeds needs = facts(legs(), direct, helps).needs();
    int calves = 5;
    assertThat(needs.of(0)).isEqualTo(4);
    assertThat(needs.of(calves)).isEqualTo(2);
  }

  @Test
  void aGroupOfARegionNeedsNothingThatOnlyALastResortGives() {
    Exercise rare = exercise("rare").withStanding(1).build();
    assertThat(facts(legs(), rare).needs().of(0)).isZero();
    assertThat(facts(legs(), rare, direct).needs().of(0)).isEqualTo(4);
    assertThat(facts(named(1), rare).needs().of(0)).isEqualTo(4);
  }

  @Test
  void withANumberOfSetsAGroupOfARegionNeedsThatManyDirectOnes() {
    Target[] all = Problems.of(Trade.of(), Region.LOWER).problem().targets().toArray(Target[]::new);
    all[0] = new Target("quadriceps", 1, 2);
    SessionFacts facts = facts(session().asked(p -> p.targets(all)), direct, helps);
    assertThat(facts.needs().of(0)).isEqualTo(8);
    assertThat(credit(facts, helps)).isZero();
  }

  @Test
  void workForARegionCountsFullyWhatHelpsHalfAndEasyWorkHalfOfThat() {
    SessionFacts facts = facts(legs(), direct, helps, easy, easyHelps);
    assertThat(credit(facts, direct)).isEqualTo(4);
    assertThat(credit(facts, helps)).isEqualTo(2);
    assertThat(credit(facts, easy)).isEqualTo(2);
    assertThat(credit(facts, easyHelps)).isEqualTo(1);
    assertThat(credit(facts(legs(), easy), easy)).as("still").isEqualTo(2);
  }

  @Test
  void forAMuscleGroupByItsNameOnlyDirectSetsCount() {
    SessionFacts facts = facts(named(1), direct, helps, easy);
    assertThat(credit(facts, direct)).isEqualTo(4);
    assertThat(credit(facts, helps)).isZero();
    assertThat(credit(facts, easy)).isEqualTo(2);
    assertThat(credit(facts(named(1), easy, helps), easy)).as("nothing better").isEqualTo(4);
  }
}
