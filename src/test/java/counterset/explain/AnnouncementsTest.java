package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.SolverNote;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class AnnouncementsTest {

  @TestFactory
  Stream<DynamicTest> everyIntervalOfAnySessionHasPlainSentences() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(100)
        .map(seed -> DynamicTest.dynamicTest("seed " + seed, () -> plain(RandomPlans.of(seed))));
  }

  private static void plain(Plan plan) {
    List<Announcement> said = Announcements.of(plan, Plans.CATALOGUE);
    assertThat(said).extracting(Announcement::interval).isEqualTo(plan.timeline());
    for (Announcement announcement : said) {
      assertThat(announcement.sentences()).isNotEmpty();
      assertThat(announcement.sentences()).allMatch(sentence -> sentence.matches("\\S.*[.!?)]"));
      assertThat(announcement.text()).doesNotContain("  ", "..", "null", "Optional", " ,");
    }
  }

  @Test
  void restsNameWhatComesAndCountDown() {
    Plan plan = Plans.legs();
    List<Announcement> rests = of(plan, IntervalKind.REST);
    assertThat(rests).hasSize(7);
    assertThat(rests).allMatch(rest -> rest.sentences().get(0).equals("Rest."));
    assertThat(rests)
        .allMatch(rest -> rest.text().endsWith("Last five seconds: five, four, three, two, one."));
    assertThat(rests.get(3).text())
        .contains("Put down the heavy dumbbell and strap on ankle weights.");
    assertThat(rests.get(5).text())
        .contains("Down on the mat, on your side. Next: Ankle-weight side-lying leg raise,")
        .contains("left side, then right side.");
    assertThat(rests.get(6).text()).contains("Last superset: ");
  }

  @Test
  void workNamesTheSideAndWhatFollows() {
    List<Announcement> work = of(Plans.legs(), IntervalKind.WORK);
    assertThat(work.get(0).text())
        .startsWith("Goblet squat. ")
        .endsWith("Then straight into Dumbbell Romanian deadlift, no rest.");
    assertThat(work.get(1).text())
        .startsWith("Take up a second dumbbell. Dumbbell Romanian deadlift.");
    Announcement left = work.get(2);
    assertThat(left.interval().side()).contains(Side.LEFT);
    assertThat(left.text())
        .startsWith("Suitcase deadlift, left side.")
        .endsWith("Then straight into the right side, no rest.");
    assertThat(work.get(3).text()).startsWith("Right side, same again.").endsWith("Then rest.");
    assertThat(work.get(15).text())
        .endsWith("This is the last one. That is the session. Well done.");
  }

  @Test
  void roundsSaySameAgain() {
    Plan plan = Plans.upperRounds();
    List<Announcement> rests = of(plan, IntervalKind.REST);
    assertThat(rests.get(0).text()).contains("Same two again, round 2 of 2.");
    assertThat(rests.get(2).text()).contains("The same again, left side first, round 2 of 2.");
    assertThat(of(plan, IntervalKind.COOL_DOWN).get(0).text()).startsWith("The work is done.");
  }

  @Test
  void theFirstWordsTellWhatIsOnAndHowItRuns() {
    Announcement first = Announcements.of(Plans.legs(), Plans.CATALOGUE).get(0);
    assertThat(first.text())
        .isEqualTo(
            "Get ready. One heavy dumbbell within reach. 8 supersets: two exercises back to back, 45 seconds each,"
                + " then 30 seconds of rest.");
    List<Announcement> warmUp = of(Plans.broken(), IntervalKind.WARM_UP);
    assertThat(warmUp.get(0).text()).contains("stop if anything hurts sharply.");
    assertThat(warmUp.get(warmUp.size() - 1).text())
        .contains("First superset next: Goblet squat with one heavy dumbbell");
  }

  @Test
  void thePlaceOfTheFirstExerciseIsKnownWithoutAWarmUp() {
    Plan plan =
        Plans.score(
            Plans.problem(
                "Short",
                4,
                new Intervals(20, 0, 45, 0, 30, 0, 1, 1),
                Set.of(),
                List.of(),
                "quadriceps"),
            new SolverNote(1, "none", "test", 0, true),
            List.of(),
            List.of(),
            "bodyweight-squat",
            "glute-bridge");
    List<Announcement> said = Announcements.of(plan, Plans.CATALOGUE);
    assertThat(said.get(0).text())
        .contains("2 exercises: 45 seconds of work", "First straight set next: Bodyweight squat.");
    assertThat(said.get(2).text())
        .startsWith("Rest. Down to the floor. Last straight set: Glute bridge.");
  }

  private static List<Announcement> of(Plan plan, IntervalKind kind) {
    return Announcements.of(plan, Plans.CATALOGUE).stream()
        .filter(announcement -> is(announcement.interval(), kind))
        .toList();
  }

  private static boolean is(Interval interval, IntervalKind kind) {
    return interval.kind() == kind;
  }
}
