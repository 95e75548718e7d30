package counterset.report.vtt;

import java.util.Locale;

/**
 * One cue.
 *
 * @param start in milliseconds from the beginning of the session
 * @param end after the start
 * @param text lines without markup, none of them empty
 */
record Cue(long start, long end, String text) {

  /** The block of a file, its number first. */
  String block(int number) {
    return number + "\n" + time(start) + " --> " + time(end) + "\n" + escaped(text) + "\n";
  }

  /** A timestamp with hours, which a session of more than an hour needs. */
  private static String time(long milliseconds) {
    long seconds = milliseconds / 1000;
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        seconds / 3600,
        seconds / 60 % 60,
        seconds % 60,
        milliseconds % 1000);
  }

  /** What would be read as a tag, an entity or an arrow. */
  static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
