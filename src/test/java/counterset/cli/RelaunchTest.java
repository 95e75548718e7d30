package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RelaunchTest {

  private static final String[] ASK = {"plan", "20 min, Gesäß"};

  @Test
  void argumentsThatWouldChangeOnTheWayStayHere() {
    assertThat(Relaunch.survive(ASK, "UTF-8")).isTrue();
    assertThat(Relaunch.survive(ASK, "ISO-8859-1")).isTrue();
    assertThat(Relaunch.survive(ASK, "US-ASCII")).isFalse();
    assertThat(Relaunch.survive(ASK, "no-such-encoding")).isFalse();
    assertThat(Relaunch.survive(new String[] {"plan", "20 min, legs"}, "US-ASCII")).isTrue();
  }
}
