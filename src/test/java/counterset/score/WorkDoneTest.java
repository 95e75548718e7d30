package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.model.Exercise;
import counterset.model.Session;
import counterset.model.Target;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Direct sets count 1 and indirect ones half: fractional counting, Pelland et al. 2024. */
class WorkDoneTest {

  private final Exercise squat =
      exercise("squat").withPattern("squat").withPrimary("quadriceps").withIntensity(3).build();
  private final Exercise hinge =
      exercise("hinge")
          .withPattern("hinge")
          .withPrimary("hamstrings")
          .withSecondary("quadriceps")
          .withIntensity(2)
          .build();
  private final Exercise easy =
      exercise("easy").withPattern("lunge").withPrimary("quadriceps").withIntensity(1).build();

  private static WorkDone done(SessionBuilder session) {
    Lineup lineup =
        session
            .asked(p -> p.targets(new Target("quadriceps", 1, 1), new Target("hamstrings", 1, 1)))
            .lineup();
    return WorkDone.of(
        lineup.facts().problem(),
        lineup.facts().catalogue(),
        new Session(List.of(), lineup.supersets(), List.of()));
  }

  @Test
  void creditIsDirectSetsAndHalfOfTheIndirectOnes() {
    WorkDone done = done(session().superset(squat, hinge));
    assertThat(done.credit(0)).isEqualTo(1.5);
    assertThat(done.working(0)).isEqualTo(1);
    assertThat(done.credit(1)).isEqualTo(1);
    WorkDone twice = done(session().asked(p -> p.clock(clock(2, 2))).superset(squat, hinge));
    assertThat(twice.credit(0)).isEqualTo(3);
    assertThat(twice.working(0)).isEqualTo(2);
  }

  @Test
  void anEasySetCountsHalfAndIsNoWorkingSet() {
    WorkDone done = done(session().superset(easy, hinge));
    assertThat(done.effort(easy)).isEqualTo(EffortClass.EASY);
    assertThat(done.effort(hinge)).isEqualTo(EffortClass.WORKING);
    assertThat(done.credit(0)).isEqualTo(1);
    assertThat(done.working(0)).isZero();
  }

  @Test
  void wantedPatternsSayWhatFillsThem() {
    Map<String, Integer> shares = Map.of("squat", 50, "hinge", 40, "bridge", 5);
    WorkDone done =
        done(
            session()
                .wanting(SmallWants.sharing(shares))
                .superset(squat, easy)
                .superset(easy)
                .candidates(hinge, SmallWants.of("bridge", "bridge")));
    assertThat(done.patterns())
        .containsExactlyInAnyOrder(
            new WorkDone.Pattern("squat", 0.25, List.of("squat")),
            new WorkDone.Pattern("hinge", 0.2, List.of()));
  }
}
