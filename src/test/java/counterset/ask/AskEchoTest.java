package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AskEchoTest {

  @Test
  void everyTopicHasALine() {
    assertThat(
            AskFixture.read("20 min, lower body, dumbbells plus ankle weights, sore knees").echo())
        .containsExactly(
            "20 minutes",
            "targets: quadriceps, hamstrings, gluteus maximus, calves (lower body)",
            "equipment: 2 dumbbells (any load), ankle weights",
            "limitations: sore knees",
            "level 2 (assumed)",
            "clock: 45 s work, 30 s rest (assumed)",
            "around it: 10 s get ready, 150 s warm-up, no cool-down (assumed)",
            "supersets: two exercises each, 1 round (assumed)",
            "pairing: opposing (assumed)",
            "seed 1 (assumed)");
  }

  @Test
  void silenceIsMarkedAsAssumed() {
    assertThat(AskFixture.read("beginner, no rest, no chest").echo())
        .contains(
            "20 minutes (assumed)",
            "equipment: none (assumed); always there: wall",
            "limitations: none named",
            "level 1",
            "clock: 45 s work (assumed), no rest")
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("targets: quadriceps")
                    .endsWith("(whole body, assumed; without chest)"));
  }

  @Test
  void wishesAreEchoedByName() {
    assertThat(
            AskFixture.read(
                    "8 min, glutes twice, more quads, dumbbells 6 and 10 kg, no lunges, keep 1A hip hinge, "
                        + "likes bridges, hates push-ups, include curl, straight sets, 30 s rest")
                .echo())
        .contains(
            "8 minutes",
            "targets: gluteus maximus [at least 2 sets], quadriceps [emphasis 2]",
            "equipment: 2 dumbbells each of 6 and 10 kg (any load)",
            "exclude: lunge (all)",
            "keep: 1A hip hinge",
            "likes: bridge (all)",
            "dislikes: push-up (all)",
            "include: curl",
            "clock: 45 s work (assumed), 30 s rest",
            "around it: 10 s get ready, 60 s warm-up, no cool-down (assumed)",
            "supersets: one exercise each (straight sets), 1 round (assumed)")
        .noneMatch(line -> line.startsWith("pairing"));
  }

  @Test
  void theTitleIsTheAsk() {
    assertThat(AskFixture.read("  Legs ,  20   min ").problem().orElseThrow().title())
        .isEqualTo("Legs , 20 min");
  }
}
