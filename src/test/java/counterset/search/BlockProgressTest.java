package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Intervals;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.timeline.SessionLength;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps are common practice, no source; that the clock keeps them is computed. */
class BlockProgressTest {

  private static final Problems LOWER = Problems.of(Catalogues.embedded(), Region.LOWER);

  private static Problem asked(int minutes, Intervals clock) {
    return LOWER.minutes(minutes).clock(clock).problem();
  }

  /**
   * The express clock, 45 s of work and 30 s of rest: 8 supersets of 45 s twice take 1090 s, of 50
   * s 1170 s, of 55 s 1250 s. In 20 minutes, 1200 s, the third week therefore stays at 50 s.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 45, 50, 50, 35",
    "12, 45, 50, 55, 35",
    "19, 45, 45, 45, 35",
  })
  void workRisesAsFarAsTheMinutesHaveRoom(int minutes, int one, int two, int three, int four) {
    Problem asked = asked(minutes, Intervals.EXPRESS);
    int[] expected = {one, two, three, four};
    for (int week = 1; week <= expected.length; week++) {
      assertThat(BlockProgress.clock(asked, week).work())
          .as("week %d", week)
          .isEqualTo(expected[week - 1]);
      assertThat(BlockProgress.clock(asked, week + BlockProgress.CYCLE))
          .as("the next cycle")
          .isEqualTo(BlockProgress.clock(asked, week));
    }
  }

  @Test
  void allWeeksHaveTheSameSupersetsAndTheLighterOneLessWork() {
    for (int minutes = 8; minutes <= 44; minutes += 3) {
      for (int work = 20; work <= 60; work += 5) {
        for (int rest = 10; rest <= 60; rest += 25) {
          for (int rounds = 1; rounds <= 3; rounds += 2) {
            Problem asked = asked(minutes, new Intervals(10, 60, work, 5, rest, 30, 2, rounds));
            int supersets = SessionLength.supersetsThatFit(asked.clock(), minutes);
            for (int week = 1; week <= BlockProgress.CYCLE; week++) {
              Intervals clock = BlockProgress.clock(asked, week);
              String where = asked.clock() + " in " + minutes + " min, week " + week;
              assertThat(SessionLength.supersetsThatFit(clock, minutes))
                  .as(where)
                  .isEqualTo(supersets);
              if (BlockProgress.isLighter(week)) {
                assertThat(clock.work()).as(where).isLessThan(work);
                assertThat(clock.rest()).as(where).isGreaterThanOrEqualTo(rest);
              } else {
                assertThat(clock.work()).as(where).isBetween(work, work + 10);
              }
            }
          }
        }
      }
    }
  }

  /**
   * 35 s of work in the express clock: with 8 supersets 10 + 150 + 8 * 70 + 7 * rest, with 9 10 +
   * 150 + 9 * 70 + 8 * rest; of 1200 s that leaves 51.25 s a rest for a ninth, so that 52 s keep it
   * out. 19 minutes leave it 43.75 s.
   */
  @ParameterizedTest
  @CsvSource({"20, 52", "19, 44"})
  void theRestOfTheLighterWeekGrowsAsFarAsItHasToAndNoFurther(int minutes, int rest) {
    assertThat(BlockProgress.clock(asked(minutes, Intervals.EXPRESS), 4))
        .isEqualTo(new Intervals(10, 150, 35, 0, rest, 0, 2, 1));
  }

  /** 10 + 180 + 8 * 100 + 7 * 30 = 1200: what just fits is taken; a second more is not. */
  @Test
  void workGrowsToTheLastSecond() {
    assertThat(BlockProgress.clock(asked(20, new Intervals(10, 180, 45, 0, 30, 0, 2, 1)), 2).work())
        .isEqualTo(50);
    assertThat(BlockProgress.clock(asked(20, new Intervals(10, 181, 45, 0, 30, 0, 2, 1)), 2).work())
        .isEqualTo(45);
  }

  /** 80 % of 40 s are 32 s, of 46 s 36.8 s, of 47 s 37.6 s, of 60 s 48 s, of 20 s 16 s. */
  @ParameterizedTest
  @CsvSource({
    "20, 15", "30, 25", "40, 30", "45, 35", "46, 35", "47, 40", "50, 40", "60, 50", "5, 4", "2, 1"
  })
  void theLighterWeekHasFourFifthsOfTheWork(int work, int lighter) {
    assertThat(
            BlockProgress.clock(asked(20, new Intervals(10, 60, work, 0, 30, 0, 2, 1)), 4).work())
        .isEqualTo(lighter);
  }

  @Test
  void everyFourthWeekIsLighter() {
    assertThat(IntStream.rangeClosed(1, 12).filter(BlockProgress::isLighter))
        .containsExactly(4, 8, 12);
  }

  @Test
  void eachWeekSaysWhatItChanges() {
    Problem asked = asked(20, Intervals.EXPRESS);
    assertThat(BlockProgress.sentence(asked, 1)).isEqualTo("45 s of work, as asked.");
    assertThat(BlockProgress.sentence(asked, 2))
        .isEqualTo("50 s of work, 5 s more than in week 1.");
    assertThat(BlockProgress.sentence(asked, 4))
        .isEqualTo("A lighter week: 35 s of work and 52 s of rest; leave the loads as they are.");
    assertThat(BlockProgress.sentence(asked, 5)).isEqualTo("45 s of work, as asked.");
    assertThat(BlockProgress.sentence(asked(12, Intervals.EXPRESS), 3))
        .isEqualTo("55 s of work, 10 s more than in week 1.");
    assertThat(BlockProgress.sentence(asked(19, Intervals.EXPRESS), 2))
        .contains("no room for more");
  }

  @Test
  void theShortestWorkStaysWork() {
    Problem asked = asked(5, new Intervals(0, 0, 1, 0, 10, 0, 1, 1));
    assertThat(BlockProgress.clock(asked, BlockProgress.CYCLE).work()).isEqualTo(1);
  }
}
