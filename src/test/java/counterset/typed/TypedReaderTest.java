package counterset.typed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names, lists, sides, rests and equipment as they are typed. */
class TypedReaderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "goblet sqats 8kg | goblet-squat",
        "SQUAT, GOBLET | goblet-squat",
        "db rdl | dumbbell-romanian-deadlift",
        "Romanian deadlift (DB) x 12 | dumbbell-romanian-deadlift",
        "rdl with kettlebell | kettlebell-romanian-deadlift",
        "KB goblet squat | kettlebell-goblet-squat",
        "pressups | push-up",
        "push ups | push-up",
        "banded clamshells | banded-clam banded-clam",
        "clams with the mini band e/s | banded-clam banded-clam",
        "clam | clam clam",
        "clam left | clam",
        "clam (L) / clam (R) | clam clam",
        "side plank left then right | side-plank side-plank",
        "split squat, hand on the wall | supported-split-squat supported-split-squat",
        "donkey kicks w/ ankle weights | ankle-weight-donkey-kick ankle-weight-donkey-kick",
        "tricep kickbacks | triceps-kickback",
        "plank | forearm-plank",
        "3 x 10 squat | bodyweight-squat",
        "10 squats | bodyweight-squat",
        "sliding leg curl, lowering only | slider-leg-curl-lowering",
        "squat and push-up | bodyweight-squat push-up",
        "squat + push-up + plank | bodyweight-squat push-up forearm-plank",
        "calf raise 2 x 10 kg | dumbbell-calf-raise",
        "squat 12kg | dumbbell-squat",
        "push-up (or from a chair) | push-up",
        "push-up (chair) | chair-push-up",
        "squat into push-up | bodyweight-squat push-up",
        "squat, push-up | bodyweight-squat push-up",
      })
  void names(String text, String exercises) {
    assertThat(Texts.session(text)).isEqualTo(exercises);
  }

  @Test
  void equipmentOfTheAskChooses() {
    assertThat(Texts.session("lower body, kettlebell\n\ngoblet squat"))
        .isEqualTo("kettlebell-goblet-squat");
    assertThat(Texts.session("lower body, dumbbells\n\ngoblet squat")).isEqualTo("goblet-squat");
    assertThat(Texts.session("upper body, dumbbells\n\ncurls")).isEqualTo("dumbbell-curl");
    assertThat(Texts.session("upper body, long band\n\ncurls")).isEqualTo("band-curl");
  }

  /** Without an ask, what the other lines use tells which of several is meant. */
  @Test
  void equipmentOfOtherLinesChooses() {
    assertThat(Texts.session("curls\n\nDB shoulder press"))
        .isEqualTo("dumbbell-curl | overhead-press");
  }

  @Test
  void whatIsStrappedOnStaysOn() {
    assertThat(
            Texts.session(
                "donkey kick e/s\n\nankle weights on\ndonkey kick e/s\n\nclam\n\nankle weights off\nfire hydrant e/s"))
        .isEqualTo(
            "donkey-kick donkey-kick | ankle-weight-donkey-kick ankle-weight-donkey-kick"
                + " | clam clam | fire-hydrant fire-hydrant");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'squat\npush-up\n\nplank\ncrunch'",
        "'squat / push-up\nplank / crunch'",
        "'squat\npush-up\nrest 30\nplank\ncrunch\nrest 30'",
        "'1A squat\n1B push-up\n2A plank\n2B crunch'",
        "'A1. squat\nA2. push-up\nB1. plank\nB2. crunch'",
        "'a) squat\nb) push-up\na) plank\nb) crunch'",
        "'1. squat / push-up\n2. plank / crunch'",
        "'1) squat\n2) push-up\n3) plank\n4) crunch'",
        "'Superset 1: squat, push-up\nSuperset 2: plank, crunch'",
        "'## Superset 1\n- [ ] squat\n- [ ] push-up\n## Superset 2\n- [x] plank\n- [x] crunch'",
        "'* squat\n* push-up\n---\n* plank\n* crunch'",
      })
  void supersets(String text) {
    assertThat(Texts.session(text)).isEqualTo("bodyweight-squat push-up | forearm-plank crunch");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "45/15 | 45 15 0 1",
        "40 s on, 20 s off | 40 20 0 1",
        "rest 20 | 45 20 0 1",
        "20 s rest | 45 20 0 1",
        "rest between supersets: 20 s | 45 20 0 1",
        "work 50 s, switch 5 s, rest 25 s | 50 25 5 1",
        "2 rounds | 45 30 0 2",
        "x3 | 45 30 0 3",
        "repeat twice | 45 30 0 2",
      })
  void clocks(String line, String clock) {
    for (String text : new String[] {line + "\n\nsquat / push-up", "squat / push-up\n\n" + line}) {
      var read = Texts.read(text).session().orElseThrow().problem().clock();
      assertThat(read.work() + " " + read.rest() + " " + read.between() + " " + read.rounds())
          .as(text)
          .isEqualTo(clock);
    }
  }

  /** The session ends where its clock does: no superset is missing only because of rounding up. */
  @Test
  void assumedMinutesHoldTheSessionAndNoMore() {
    for (String clock : new String[] {"45/30", "20/10", "30/5", "15/0", "60/60"}) {
      var problem =
          Texts.read(clock + "\n\nsquat\n\npush-up\n\nplank").session().orElseThrow().problem();
      assertThat(
              counterset.timeline.SessionLength.supersetsThatFit(
                  problem.clock(), problem.minutes()))
          .as(clock)
          .isEqualTo(3);
    }
  }

  @Test
  void assumptionsAreSaid() {
    assertThat(Texts.read("goblet squat 8 kg / push-up").session().orElseThrow().readAs())
        .anyMatch(
            it ->
                it.startsWith("targets: ")
                    && it.endsWith("(assumed: what the exercises train first)"))
        .anyMatch(it -> it.equals("equipment: dumbbell of 8 kg (assumed: what the exercises need)"))
        .anyMatch(it -> it.endsWith("(assumed: what the clock of these lines comes to)"))
        .contains("warm-up: no moves typed, so the program chooses them");
  }

  @Test
  void everyLineIsToldOf() {
    String text =
        "# remark\n20 min, lower body, dumbbells\n45/30\nWarm-up:\nmarch\n\nsquat x 12 / plank (slow)\n---\nankle weights on\nclam";
    assertThat(Texts.read(text).lines())
        .extracting(Taken::line)
        .contains(1, 2, 3, 4, 5, 7, 8, 9, 10);
    assertThat(Texts.read(text).lines())
        .extracting(Taken::typed)
        .contains("x 12", "(slow)", "# remark");
  }
}
