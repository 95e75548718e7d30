package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import counterset.timeline.SessionLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Rounds with the real catalogue; how many good exercises suffice is common practice, no source.
 */
class RoundsByLengthTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  private static int rounds(Problems asked) {
    return RoundsByLength.of(asked.problem(), CATALOGUE);
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 30, 45})
  void dumbbellsAndABenchFillAnySessionForTheWholeBody(int minutes) {
    Problems whole =
        Problems.of(CATALOGUE, Region.values())
            .minutes(minutes)
            .owning(Problems.two("dumbbell"), Problems.two("bench"));
    assertThat(rounds(whole)).isEqualTo(1);
  }

  @Test
  void bareHandsRepeatWhatTheyCanDoForTheChestAndTriceps() {
    Target[] few = {new Target("chest", 1, 1), new Target("triceps", 1, 1)};
    int longer = rounds(Problems.of(CATALOGUE, Region.UPPER).minutes(45).targets(few).level(1));
    int shorter = rounds(Problems.of(CATALOGUE, Region.UPPER).minutes(10).targets(few).level(1));
    assertThat(longer).isGreaterThan(shorter).isLessThanOrEqualTo(5);
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8, 10})
  void aSupersetAlwaysFits(int minutes) {
    Problem problem =
        Problems.of(CATALOGUE, Region.UPPER)
            .minutes(minutes)
            .targets(new Target("forearms", 1, 1))
            .problem();
    int rounds = RoundsByLength.of(problem, CATALOGUE);
    int once = SessionLength.supersetsThatFit(problem.clock(), minutes);
    int again = SessionLength.supersetsThatFit(problem.clock().withRounds(rounds), minutes);
    assertThat(again).isGreaterThanOrEqualTo(Math.min(1, once));
  }
}
