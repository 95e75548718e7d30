package counterset.report;

import java.util.Locale;

/** Seconds as people read them. */
public final class Times {

  private Times() {}

  /** Minutes and seconds, {@code 0:00} to {@code 1439:59}. */
  public static String clock(int seconds) {
    return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
