package counterset.ask;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** An interval that a coach may give a length. */
public enum ClockPart {
  GET_READY("get ready", 600, "get ready", "getting ready"),
  WARM_UP("warm-up", 3600, "warm-up", "warming up"),
  WORK("work", 600, "work", "work interval", "work intervals"),
  SWITCH("switch", 600, "switch"),
  REST("rest", 600, "rest", "rests", "rest interval"),
  COOL_DOWN("cool-down", 3600, "cool-down", "cooling down");

  /** Those of which a superset is made. */
  static final Set<ClockPart> INTERVALS = EnumSet.of(WORK, SWITCH, REST);

  private final String text;
  private final int maxSeconds;
  private final List<String> words;

  ClockPart(String text, int maxSeconds, String... words) {
    this.text = text;
    this.maxSeconds = maxSeconds;
    this.words = List.of(words);
  }

  /** Its name in a sentence. */
  public String text() {
    return text;
  }

  /** Above this it is taken for a slip. */
  int maxSeconds() {
    return maxSeconds;
  }

  List<String> words() {
    return words;
  }

  /** Whether it belongs to the time around the supersets, which is measured in minutes. */
  boolean isAround() {
    return this == WARM_UP || this == COOL_DOWN;
  }
}
