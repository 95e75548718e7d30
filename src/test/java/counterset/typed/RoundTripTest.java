package counterset.typed;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.RandomPlans;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A session that is typed out in any of many ways is read as that session. */
class RoundTripTest {

  private static final int PLANS = 60;

  @ParameterizedTest
  @EnumSource(Writing.class)
  void isTheSameSession(Writing writing) {
    int read = 0;
    for (long seed = 1; seed <= PLANS; seed++) {
      Plan plan = RandomPlans.of(seed);
      List<Superset> supersets = plan.session().supersets();
      if (supersets.isEmpty()
          || supersets.stream().anyMatch(it -> it.exercises().isEmpty())
          || !writing.tells(plan.session(), plan.problem().clock().perSuperset())) {
        continue;
      }
      String text = writing.of(plan.session());
      TypedReading reading = Texts.read(text, plan.problem());
      String what = "seed " + seed + "\n" + text;
      assertThat(reading.faults()).as(what).isEmpty();
      TypedSession typed = reading.session().orElseThrow();
      assertThat(Texts.supersets(typed.session()))
          .as(what)
          .isEqualTo(Texts.supersets(plan.session()));
      assertThat(typed.session().warmUp()).as(what).isEqualTo(plan.session().warmUp());
      assertThat(typed.session().coolDown()).as(what).isEqualTo(plan.session().coolDown());
      assertThat(typed.problem().targets()).as(what).isEqualTo(plan.problem().targets());
      assertThat(typed.problem().equipment()).as(what).isEqualTo(plan.problem().equipment());
      read++;
    }
    assertThat(read).isGreaterThan(PLANS / 4);
  }
}
