package counterset.json;

import java.util.OptionalInt;

/**
 * One fault of an input, with its place.
 *
 * @param file the file as the user named it
 * @param pointer the JSON pointer of the value; empty for the whole document
 * @param line the line of the value, from 1, where the text is at hand
 * @param message one or two plain sentences: the value, what is allowed, the remedy
 */
public record Violation(String file, String pointer, OptionalInt line, String message) {

  /** A fault of a file as a whole. */
  public static Violation of(String file, String message) {
    return new Violation(file, "", OptionalInt.empty(), message);
  }

  /** {@code file:line pointer: message} on one line. */
  @Override
  public String toString() {
    String place = line.isPresent() ? file + ":" + line.getAsInt() : file;
    return (pointer.isEmpty() ? place : place + " " + pointer) + ": " + message;
  }
}
