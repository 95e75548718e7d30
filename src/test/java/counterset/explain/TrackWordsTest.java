package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.Track;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said to the followers of tracks, and what is wrong for them. */
class TrackWordsTest {

  private static final Plan GOOD = ClassPlans.good();

  private static List<String> faults(Plan plan) {
    return plan.matches().stream()
        .filter(FaultWords::isFault)
        .map(match -> FaultWords.of(match, plan, Plans.CATALOGUE))
        .toList();
  }

  private static List<String> said(IntervalKind kind) {
    return Announcements.of(GOOD, Plans.CATALOGUE).stream()
        .filter(announcement -> announcement.interval().kind() == kind)
        .map(Announcement::text)
        .toList();
  }

  @Test
  void aGoodClassHasNoFaults() {
    assertThat(faults(GOOD)).isEmpty();
    assertThat(GOOD.tracks()).extracting(Track::name).hasSize(3).contains("sore-knees");
  }

  @Test
  void restsTellWhatSomeDoInstead() {
    List<String> rests = said(IntervalKind.REST);
    assertThat(rests.get(0))
        .contains("left side, then right side. Take a long step back")
        .contains("rear heel up. Sore knees: Single-leg hip hinge instead.");
    assertThat(rests.get(1))
        .contains("Sore knees or no jumping: Slow mountain climber instead of Mountain climber.")
        .contains("sore knees: Standing crunch, then Standing glute squeeze instead.");
    List<String> warmUp = said(IntervalKind.WARM_UP);
    assertThat(warmUp.get(warmUp.size() - 1))
        .contains("Hold one dumbbell upright")
        .endsWith(": Goblet partial squat instead of Goblet squat.");
  }

  @Test
  void workTellsItOncePerExercise() {
    List<String> work = said(IntervalKind.WORK);
    assertThat(work.get(0))
        .startsWith("Goblet squat. Sore knees or no floor plus sore knees: Goblet partial squat");
    assertThat(work.get(1)).doesNotContain("instead");
    assertThat(work.get(2)).contains("Sore knees: Single-leg hip hinge instead, left side.");
    assertThat(work.get(3)).startsWith("Right side, same again.").doesNotContain("instead");
  }

  @Test
  void sidesAreThoseOfTheFollowers() {
    Modifications modifications = new Modifications(GOOD);
    List<Interval> work =
        GOOD.timeline().stream().filter(it -> it.kind() == IntervalKind.WORK).toList();
    assertThat(modifications.of(work.get(3)))
        .extracting(shown -> shown.exercise().id() + " " + shown.side().orElseThrow().id())
        .containsExactly("single-leg-hip-hinge right", "standing-hip-extension alternating");
    Interval own = modifications.asDoneBy(GOOD.tracks().get(0), work.get(3));
    assertThat(own.start()).isEqualTo(work.get(3).start());
    assertThat(own.side()).contains(Side.RIGHT);
    assertThat(modifications.asDoneBy(GOOD.tracks().get(1), work.get(3))).isEqualTo(work.get(3));
  }

  @Test
  void aMoveThatDoesNotSuitIsReplacedAloud() {
    Plan plan = ClassPlans.warmUp("warm-march", "warm-reverse-lunge", "warm-side-step");
    List<String> said =
        Announcements.of(plan, Plans.CATALOGUE).stream()
            .filter(announcement -> announcement.interval().kind() == IntervalKind.WARM_UP)
            .map(Announcement::text)
            .toList();
    assertThat(said.get(0)).doesNotContain("instead");
    assertThat(said.get(1))
        .containsPattern("Sore knees or no floor plus sore knees: .+ instead\\.");
    Interval move = plan.timeline().get(2);
    Interval own = new Modifications(plan).asDoneBy(plan.tracks().get(0), move);
    assertThat(own.exercise()).isPresent().isNotEqualTo(move.exercise());
  }

  @Test
  void faultsNameTheTrackAndWhatHelps() {
    assertThat(faults(ClassPlans.broken()))
        .contains(
            "1A, for sore knees: Goblet squat goes against sore knees (knee demand 2, at most 1,"
                + " deep-knee-flexion), and no modification is beside it."
                + " Show another exercise beside it, or swap it.")
        .anySatisfy(
            fault ->
                assertThat(fault)
                    .startsWith(
                        "3A, for no floor plus sore knees: Slow mountain climber instead of")
                    .contains("goes against no floor (position prone)"))
        .anySatisfy(
            fault ->
                assertThat(fault)
                    .startsWith("2A to 3B, for no floor plus sore knees: the same exercise twice")
                    .contains("Standing hip extension"));
  }

  @Test
  void cautionsOfTracksAreListedOnce() {
    assertThat(new TrackWords(Plans.CATALOGUE).cautions(GOOD))
        .hasSize(3)
        .allMatch(caution -> caution.startsWith("For "))
        .contains("For no jumping: one foot stays on the floor at all times.");
    assertThat(new TrackWords(Plans.CATALOGUE).cautions(Plans.legs())).isEmpty();
  }
}
