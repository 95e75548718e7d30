package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.fixture.Entries;
import counterset.journal.Entry;
import counterset.model.Exercise;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.report.Plans;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadAdviserTest {

  /** One heavy dumbbell. */
  private static final String SQUAT = "goblet-squat";

  private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

  private static LoadAdvice advise(List<Owned> owned, Entry... entries) {
    return new LoadAdviser(List.of(entries), owned, DAY).advise(exercise(SQUAT));
  }

  private static LoadAdvice advise(Entry... entries) {
    return advise(dumbbells(6.0, 10.0, 12.0), entries);
  }

  private static Exercise exercise(String id) {
    return Plans.CATALOGUE.exercises().get(id);
  }

  private static List<Owned> dumbbells(Double... kg) {
    return List.of(Plans.owned("dumbbell", 2, kg));
  }

  private static Entry on(int day, double kg, int... reps) {
    return Entries.lifted("2026-03-0" + day, SQUAT, kg, reps);
  }

  /** 10 kg x 14: Epley 14.67, Brzycki 15.65; at 12 kg these leave 6.7 and 9.4 repetitions. */
  @Test
  void upToTheNextMassThatIsOwned() {
    LoadAdvice advice = advise(on(2, 10, 14), on(4, 10, 12, 14));
    assertThat(advice.step()).isEqualTo(Step.UP);
    assertThat(advice.kg()).hasValue(12);
    assertThat(advice.oneRepMax().orElseThrow().epley()).isCloseTo(14.667, within(0.001));
    assertThat(advice.oneRepMax().orElseThrow().brzycki()).isCloseTo(15.652, within(0.001));
    assertThat(advice.last().orElseThrow().reps()).containsExactly(12, 14);
    assertThat(advice.say())
        .isEqualTo(
            "10 kg last time for 12, 14: try 12 kg next, for about 6 to 9 repetitions (2-for-2"
                + " rule; Epley and Brzycki: once 14.7 to 15.7 kg)");
  }

  @Test
  void holdUntilTheRuleIsMet() {
    for (Entry[] entries :
        List.of(
            new Entry[] {on(2, 10, 14), on(4, 10, 13)},
            new Entry[] {on(2, 10, 13), on(4, 10, 14)},
            new Entry[] {on(2, 10, 14), on(4, 10, 15, 12)},
            // A load taken up again, or for the first time, begins anew.
            new Entry[] {on(2, 6, 14), on(4, 10, 14)},
            new Entry[] {on(1, 10, 14), on(2, 12, 6), on(4, 10, 14)})) {
      LoadAdvice advice = advise(entries);
      assertThat(advice.step()).as(advice.say()).isEqualTo(Step.HOLD);
      assertThat(advice.kg()).hasValue(10);
      assertThat(advice.say()).contains("stay with 10 kg until the last set reaches 14 in two");
    }
  }

  @Test
  void holdWhereTheNextMassLeavesTooFew() {
    LoadAdvice advice = advise(on(2, 6, 14), on(4, 6, 14));
    assertThat(advice.step()).isEqualTo(Step.HOLD);
    assertThat(advice.kg()).hasValue(6);
    assertThat(advice.say())
        .isEqualTo(
            "6 kg last time for 14: stay with 6 kg; 10 kg is too far a jump, about 0 repetitions by"
                + " Epley and Brzycki (6 or more wanted)");
  }

  /** 10 kg x 14 leaves 6.7 repetitions at 12 kg and 5.2 at 12.5 kg (Epley, the fewer). */
  @Test
  void sixRepetitionsAreEnoughAndFiveAreNot() {
    Entry[] entries = {on(2, 10, 14), on(4, 10, 14)};
    assertThat(advise(dumbbells(10.0, 12.0), entries).step()).isEqualTo(Step.UP);
    assertThat(advise(dumbbells(10.0, 12.5), entries).step()).isEqualTo(Step.HOLD);
  }

  @Test
  void holdWithTheHeaviest() {
    LoadAdvice advice = advise(on(2, 12, 15), on(4, 12, 15));
    assertThat(advice.step()).isEqualTo(Step.HOLD);
    assertThat(advice.say()).contains("12 kg is the heaviest there is");
  }

  @Test
  void noAdviceWithoutARecord() {
    LoadAdvice advice = advise(Entries.lifted("2026-03-02", "hip-hinge", 10, 14));
    assertThat(advice.step()).isEqualTo(Step.NO_ADVICE);
    assertThat(advice.kg()).isEmpty();
    assertThat(advice.last()).isEmpty();
    assertThat(advice.say()).isEqualTo("no advice, no load is logged yet");
  }

  @Test
  void noAdviceFromOneSession() {
    LoadAdvice advice = advise(on(2, 10, 15, 15, 15));
    assertThat(advice.step()).isEqualTo(Step.NO_ADVICE);
    assertThat(advice.say()).contains("10 kg last time for 15, 15, 15: no advice").contains("two");
  }

  @Test
  void noAdviceOutOfTheRangeOfTheFormulas() {
    LoadAdvice advice = advise(on(2, 10, 16), on(4, 10, 16));
    assertThat(advice.step()).isEqualTo(Step.NO_ADVICE);
    assertThat(advice.oneRepMax()).isEmpty();
    assertThat(advice.say()).contains("the formulas hold for 1 to 15 repetitions");
    assertThat(advise(on(2, 10, 16), on(4, 10, 15)).step()).isEqualTo(Step.UP);
  }

  @Test
  void noAdviceAfterALongBreak() {
    Entry[] entries = {on(2, 10, 14), on(4, 10, 14)};
    LocalDate last = LocalDate.of(2026, 3, 4);
    List<Owned> owned = dumbbells(10.0, 12.0);
    assertThat(
            new LoadAdviser(List.of(entries), owned, last.plusDays(28))
                .advise(exercise(SQUAT))
                .step())
        .isEqualTo(Step.UP);
    LoadAdvice late =
        new LoadAdviser(List.of(entries), owned, last.plusDays(29)).advise(exercise(SQUAT));
    assertThat(late.step()).isEqualTo(Step.NO_ADVICE);
    assertThat(late.say()).contains("29 days ago; start lighter");
  }

  @Test
  void noAdviceWithoutKnowingWhatIsOwned() {
    Entry[] entries = {on(2, 10, 14), on(4, 10, 14)};
    assertThat(advise(dumbbells(), entries).say()).contains("masses that the client owns");
    assertThat(advise(List.of(), entries).step()).isEqualTo(Step.NO_ADVICE);
    assertThat(advise(dumbbells(6.0, 12.0), entries).say()).contains("is not among those");
  }

  @Test
  void whatCannotServeTheExerciseIsNoChoice() {
    List<Owned> owned =
        List.of(
            Plans.owned("dumbbell", 1, 10.0),
            Plans.owned("kettlebell", 1, 12.0),
            new Owned("dumbbell", 2, List.of(11.0), EnumSet.of(Load.LIGHT)));
    assertThat(advise(owned, on(2, 10, 14), on(4, 10, 14)).say()).contains("heaviest there is");
  }

  @Test
  void whatComesAfterTheDayIsNotKnownYet() {
    List<Entry> entries =
        List.of(on(2, 10, 14), on(4, 10, 14), Entries.lifted("2026-03-10", SQUAT, 12, 4));
    LoadAdvice advice =
        new LoadAdviser(entries, dumbbells(10.0, 12.0), DAY).advise(exercise(SQUAT));
    assertThat(advice.step()).isEqualTo(Step.UP);
  }

  @Test
  void onlyExercisesWithALoadHaveOne() {
    assertThat(LoadAdviser.isLoaded(exercise(SQUAT))).isTrue();
    assertThat(LoadAdviser.isLoaded(exercise("bodyweight-squat"))).isFalse();
    assertThat(LoadAdviser.isLoaded(exercise("ankle-weight-leg-curl"))).isFalse();
  }
}
