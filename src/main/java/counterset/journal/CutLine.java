package counterset.journal;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A line whose writing was cut short: by a kill, a full disk or a power cut.
 *
 * <p>Entries are written with one property first and in one piece, so what a cut leaves is the
 * beginning of an entry whose braces never close, perhaps with zeros behind it where the file
 * system knew the length but had no bytes yet. Anything else is damage of another kind, and an
 * error.
 *
 * <p>Whoever appends next ends such a line with {@value #MARK}. From then on it is known for what
 * it is, and a damaged line in the middle is never passed over because it merely looks cut. A coach
 * may end a line with the mark by hand to leave it out.
 */
final class CutLine {

  /** Ends a line that is left out. No entry ends with it, since an entry ends with a brace. */
  static final String MARK = "#cut";

  private static final byte[] ENDING = (" " + MARK).getBytes(StandardCharsets.US_ASCII);
  private static final byte[] FIRST = "{\"entry\":".getBytes(StandardCharsets.US_ASCII);

  private CutLine() {}

  /** Whether a line is marked as one to leave out. */
  static boolean isMarked(byte[] line) {
    return new String(line, StandardCharsets.ISO_8859_1).stripTrailing().endsWith(MARK);
  }

  /**
   * Whether the last line of a file, which no line break ends, is what a cut leaves. The mark
   * itself may have been cut short as well.
   */
  static boolean isCut(byte[] line) {
    int written = withoutZeros(line, withoutMark(line, withoutZeros(line, line.length)));
    int common = Math.min(written, FIRST.length);
    return Arrays.equals(line, 0, common, FIRST, 0, common) && !closes(line, written);
  }

  private static int withoutZeros(byte[] line, int length) {
    int written = length;
    while (written > 0 && line[written - 1] == 0) {
      written--;
    }
    return written;
  }

  private static int withoutMark(byte[] line, int length) {
    for (int part = Math.min(ENDING.length, length); part > 0; part--) {
      if (Arrays.equals(line, length - part, length, ENDING, 0, part)) {
        return length - part;
      }
    }
    return length;
  }

  /** Whether the braces of the first object are all closed. */
  private static boolean closes(byte[] line, int length) {
    int depth = 0;
    boolean quoted = false;
    for (int i = 0; i < length; i++) {
      if (quoted) {
        if (line[i] == '\\') {
          i++;
        } else if (line[i] == '"') {
          quoted = false;
        }
      } else if (line[i] == '"') {
        quoted = true;
      } else if (line[i] == '{') {
        depth++;
      } else if (line[i] == '}' && --depth == 0) {
        return true;
      }
    }
    return false;
  }
}
