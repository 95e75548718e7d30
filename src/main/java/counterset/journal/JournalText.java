package counterset.journal;

import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.Violation;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** The bytes of a journal, line by line. */
final class JournalText {

  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private final String file;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Integer> leftOut = new ArrayList<>();
  private final List<Violation> violations = new ArrayList<>();

  private JournalText(String file) {
    this.file = file;
  }

  /**
   * Reads all lines. Blank ones are passed over.
   *
   * @throws InvalidInputException with all faults of all lines
   */
  static Reading read(String file, byte[] bytes) {
    JournalText text = new JournalText(file);
    int start = Arrays.mismatch(bytes, BYTE_ORDER_MARK) == BYTE_ORDER_MARK.length ? 3 : 0;
    int number = 1;
    for (int i = start; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        text.line(number++, Arrays.copyOfRange(bytes, start, i), true);
        start = i + 1;
      }
    }
    text.line(number, Arrays.copyOfRange(bytes, start, bytes.length), false);
    InvalidInputException.throwIfAny(text.violations);
    return new Reading(text.entries, text.leftOut);
  }

  private void line(int number, byte[] line, boolean ended) {
    if (isBlank(line)) {
      return;
    }
    if (CutLine.isMarked(line) || !ended && CutLine.isCut(line)) {
      leftOut.add(number);
      return;
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line)).toString();
      entries.add(EntryReader.read(JsonDocument.parse(file, text)));
    } catch (CharacterCodingException e) {
      add(number, "", "The line is not UTF-8 text.");
    } catch (InvalidInputException e) {
      e.violations().forEach(fault -> add(number, fault.pointer(), fault.message()));
    }
  }

  private void add(int number, String pointer, String message) {
    String remedy = " Mend the line, or end it with " + CutLine.MARK + " to leave it out.";
    violations.add(new Violation(file, pointer, OptionalInt.of(number), message + remedy));
  }

  private static boolean isBlank(byte[] line) {
    for (byte b : line) {
      if (b != ' ' && b != '\t' && b != '\r') {
        return false;
      }
    }
    return true;
  }
}
