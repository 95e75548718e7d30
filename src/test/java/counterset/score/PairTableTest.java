package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.SessionBuilder.session;
import static counterset.fixture.SmallWants.broadSession;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Region;
import counterset.model.Target;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What pairs of movement patterns cost; common practice, no source. */
class PairTableTest {

  private static Exercise of(String id, String pattern, String... muscles) {
    return exercise(id).withPattern(pattern).withPrimary(muscles).build();
  }

  private static SessionBuilder few() {
    return session().wanting(SmallWants.sharing(Map.of("squat", 100)));
  }

  private static SessionBuilder wholeBody() {
    Target[] all =
        Problems.of(Trade.of(), Region.values()).problem().targets().toArray(Target[]::new);
    return session()
        .wanting(SmallWants.sharing("whole", Map.of("squat", 100)))
        .asked(p -> p.targets(all));
  }

  private static int cost(SessionBuilder session, Exercise one, Exercise other) {
    SessionFacts facts = session.superset(one, other).lineup().facts();
    Candidate first = facts.candidate(one.id()).orElseThrow();
    Candidate second = facts.candidate(other.id()).orElseThrow();
    int cost = PairTable.of(facts).cost(first, second);
    assertThat(PairTable.of(facts).cost(second, first)).as("in turn").isEqualTo(cost);
    return cost;
  }

  @ParameterizedTest
  @CsvSource({
    "squat, hinge, 0",
    "push, pull, 0",
    "squat, bridge, 3",
    "squat, lunge, 13",
    "squat, calf, 5",
    "calf, opener, 5",
    "brace, turn, 5",
    "squat, push, 4",
    "calf, brace, 4",
    "push, brace, 4",
    "dip, pull, 3",
    "push, dip, 13",
    "jump, squat, 4",
    "jump, calf, 14",
    "jump, push, 4",
    "jog, push, 6",
    "squat, unheard-of, 6"
  })
  void goByTheGroupsOfTheirPatterns(String one, String other, int cost) {
    assertThat(cost(few(), of("one", one, "chest"), of("other", other, "calves"))).isEqualTo(cost);
  }

  @Test
  void onePatternTwiceIsDearWhateverIsWanted() {
    Exercise one = of("one", "squat", "chest");
    Exercise other = of("other", "squat", "calves");
    assertThat(cost(few(), one, other)).isEqualTo(14);
    assertThat(cost(broadSession(), one, other)).isEqualTo(14);
  }

  @Test
  void sharedMusclesCostMoreWhereManyPatternsAreWanted() {
    Exercise squat = of("squat", "squat", "quadriceps", "chest");
    Exercise hinge = of("hinge", "hinge", "quadriceps");
    Exercise both = of("both", "hinge", "quadriceps", "chest");
    assertThat(cost(few(), squat, hinge)).isEqualTo(2);
    assertThat(cost(few(), squat, both)).isEqualTo(4);
    assertThat(cost(broadSession(), squat, hinge)).isEqualTo(5);
    assertThat(cost(broadSession(), squat, both)).isEqualTo(10);
    Exercise lunge = of("lunge", "lunge", "quadriceps", "chest");
    assertThat(cost(broadSession(), squat, lunge)).as("the worst").isEqualTo(16);
  }

  @Test
  void twoThatTireTheBackCostMore() {
    Exercise hinge = of("hinge", "hinge", "calves");
    Exercise row = exercise("row").withPattern("pull").withFamily("bent-over-row").build();
    Exercise other = exercise("other").withPattern("pull").withFamily("seated-row").build();
    assertThat(cost(few(), hinge, row)).isEqualTo(cost(few(), hinge, other) + 5);
  }

  @ParameterizedTest
  @CsvSource({"squat, hinge, 12", "squat, bridge, 12", "squat, push, 1", "squat, brace, 4"})
  void forTheWholeBodyLegsGoWithArms(String one, String other, int cost) {
    assertThat(cost(wholeBody(), of("one", one, "chest"), of("other", other, "calves")))
        .isEqualTo(cost);
  }

  @Test
  void withoutPatternsOnlyMusclesCount() {
    Exercise one = of("one", "squat", "chest");
    Exercise other = of("other", "push", "calves");
    assertThat(cost(session(), one, other)).isZero();
    assertThat(cost(session(), one, of("third", "push", "chest"))).isEqualTo(2);
  }
}
