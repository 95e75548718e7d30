package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.SessionBuilder.session;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.Load;
import counterset.model.Position;
import counterset.model.Sides;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How hard work is for a client, and its place in the order of work. Common practice, no source.
 */
class MeritsTest {

  private static SessionBuilder wanting() {
    return session().wanting(SmallWants.sharing(Map.of("squat", 100)));
  }

  private static Merit merit(SessionBuilder session, ExerciseBuilder exercise) {
    return session.superset(exercise.build()).lineup().places()[0].merit();
  }

  private static Merit merit(int level, ExerciseBuilder exercise) {
    return merit(wanting().asked(p -> p.level(level)), exercise.withLevel(1));
  }

  private static ExerciseBuilder squat(int intensity) {
    return exercise("squat").withPattern("squat").withIntensity(intensity);
  }

  private static ExerciseBuilder loaded(int intensity) {
    return squat(intensity).withNeed(Trade.DUMBBELL, 1, Load.HEAVY);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1, WORKING, WORKING",
    "1, 2, WORKING, WORKING",
    "1, 3, HARD, HARD",
    "2, 1, EASY, WORKING",
    "2, 2, WORKING, WORKING",
    "2, 3, HARD, HARD",
    "3, 1, EASY, WORKING",
    "3, 2, EASY, WORKING",
    "3, 3, WORKING, HARD"
  })
  void effortGoesByIntensityLevelAndLoad(
      int level, int intensity, EffortClass bare, EffortClass loaded) {
    assertThat(merit(level, squat(intensity)).effort()).as("bare").isEqualTo(bare);
    assertThat(merit(level, loaded(intensity)).effort()).as("loaded").isEqualTo(loaded);
  }

  @Test
  void aWeightToLeanOnIsNoLoad() {
    ExerciseBuilder leaning = squat(1).withNeed(Trade.DUMBBELL, 2);
    assertThat(merit(2, leaning).effort()).isEqualTo(EffortClass.EASY);
    ExerciseBuilder worn = squat(1).withNeed(Trade.ANKLE_WEIGHTS, 1);
    assertThat(merit(2, worn).effort()).isEqualTo(EffortClass.WORKING);
    ExerciseBuilder chair = squat(1).withNeed(Trade.CHAIR, 1);
    assertThat(merit(2, chair).effort()).isEqualTo(EffortClass.EASY);
  }

  @Test
  void lightStaplesOfTheTrunkAreWork() {
    ExerciseBuilder plank = exercise("plank").withPattern("brace").withIntensity(1);
    assertThat(merit(lifting(), plank).effort()).isEqualTo(EffortClass.EASY);
    assertThat(merit(2, plank).effort()).as("nothing to lift").isEqualTo(EffortClass.WORKING);
    assertThat(merit(2, plank.withStanding(1)).effort()).isEqualTo(EffortClass.EASY);
    assertThat(merit(lifting(), plank.withStanding(3)).effort()).isEqualTo(EffortClass.WORKING);
    assertThat(merit(3, plank).effort()).as("for the skilled").isEqualTo(EffortClass.EASY);
    ExerciseBuilder calf = exercise("raise").withPattern("calf").withIntensity(1).withStanding(3);
    assertThat(merit(lifting(), calf).effort()).isEqualTo(EffortClass.WORKING);
    assertThat(merit(2, squat(1).withStanding(3)).effort()).isEqualTo(EffortClass.EASY);
  }

  private static SessionBuilder lifting() {
    return wanting().asked(p -> p.owning(Problems.two(Trade.DUMBBELL)));
  }

  @Test
  void smallLegWorkIsLessForTheSkilled() {
    ExerciseBuilder bare = squat(3).withOneJoint().withLevel(2);
    assertThat(merit(skilled(), bare).effort()).isEqualTo(EffortClass.WORKING);
    ExerciseBuilder held = loaded(3).withOneJoint().withLevel(2);
    assertThat(merit(skilled(), held).effort()).isEqualTo(EffortClass.HARD);
    assertThat(merit(3, loaded(1).withOneJoint()).effort()).isEqualTo(EffortClass.EASY);
    ExerciseBuilder push = exercise("push").withPattern("push").withIntensity(3).withOneJoint();
    assertThat(merit(skilled(), push.withLevel(2)).effort()).isEqualTo(EffortClass.HARD);
  }

  private static SessionBuilder skilled() {
    return wanting().asked(p -> p.level(3));
  }

  @Test
  void whatBeginnersCanDoIsLessForTheSkilledUnlessItIsAMainLift() {
    assertThat(merit(3, squat(3)).effort()).isEqualTo(EffortClass.WORKING);
    assertThat(merit(skilled(), squat(3).withLevel(2)).effort()).isEqualTo(EffortClass.HARD);
    assertThat(merit(3, loaded(3)).effort()).isEqualTo(EffortClass.HARD);
  }

  @Test
  void wallsMakeWorkEasierUnlessALimitationAsksForThem() {
    ExerciseBuilder wall = squat(2).withPosition(Position.WALL);
    assertThat(merit(2, wall).effort()).isEqualTo(EffortClass.EASY);
    assertThat(merit(1, wall).effort()).isEqualTo(EffortClass.WORKING);
    SessionBuilder limited = wanting().asked(p -> p.limited("no-floor"));
    assertThat(merit(limited, wall).effort()).isEqualTo(EffortClass.WORKING);
  }

  @Test
  void aLimitationMakesWorkHarder() {
    SessionBuilder limited = wanting().asked(p -> p.limited("no-floor"));
    assertThat(merit(limited, squat(1)).effort()).isEqualTo(EffortClass.WORKING);
    SessionBuilder beginner = wanting().asked(p -> p.limited("no-floor").level(1));
    assertThat(merit(beginner, squat(2).withLevel(1)).effort()).isEqualTo(EffortClass.HARD);
  }

  @Test
  void aLastResortIsLess() {
    assertThat(merit(2, squat(2).withStanding(1)).effort()).isEqualTo(EffortClass.WORKING);
    assertThat(merit(2, squat(2).withStanding(1)).fillsPattern()).isFalse();
    assertThat(merit(2, squat(2)).fillsPattern()).isTrue();
    assertThat(merit(2, squat(1)).fillsPattern()).isFalse();
    assertThat(merit(1, squat(1).withStanding(1)).effort()).isEqualTo(EffortClass.EASY);
  }

  @Test
  void tiersAreBigLiftsThenOneSidedOnesAndPowerThenSeveralJointsOneJointEasy() {
    assertThat(merit(2, exercise("jump").withPattern("jump")).tier()).isEqualTo(3);
    assertThat(merit(2, squat(3)).tier()).isEqualTo(4);
    assertThat(merit(2, squat(3).withSides(Sides.UNILATERAL)).tier()).isEqualTo(3);
    assertThat(merit(2, squat(3).withOneJoint()).tier()).isEqualTo(1);
    assertThat(merit(2, squat(2)).tier()).isEqualTo(2);
    assertThat(merit(2, exercise("dip").withPattern("dip").withIntensity(3)).tier()).isEqualTo(2);
    assertThat(merit(2, squat(2).withOneJoint()).tier()).isEqualTo(1);
    assertThat(merit(2, squat(1)).tier()).isZero();
  }
}
