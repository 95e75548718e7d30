package counterset.report.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KindsTest {

  private static final Kinds<String> KINDS =
      new Kinds<String>().with(".chapters.vtt", it -> "chapters " + it).with(".vtt", it -> it);

  @Test
  void theEndingSaysTheKindWhateverItsCase() {
    assertThat(KINDS.render("Legs.VTT", "x")).isEqualTo("x");
    assertThat(KINDS.render("legs.chapters.vtt", "x")).isEqualTo("chapters x");
    assertThat(KINDS.isOf("legs.chapters.vtt", ".vtt")).isFalse();
  }

  @Test
  void otherEndingsAreNotKnown() {
    assertThat(KINDS.knows("legs.txt")).isFalse();
    assertThat(KINDS.knows("vtt")).isFalse();
    assertThat(KINDS.endings()).isEqualTo(".chapters.vtt, .vtt");
  }

  @Test
  void everyKindOfAWeekIsOneOfASession() {
    for (String ending : WeekHandout.KINDS.endings().split(", ")) {
      assertThat(Handout.KINDS.isOf("a" + ending, ending)).as(ending).isTrue();
    }
  }
}
