package counterset.model;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A position of a superset, written {@code 3A}.
 *
 * @param superset from 1
 * @param position from 0, written A, B, C
 */
public record At(int superset, int position) implements Comparable<At> {

  private static final Pattern WRITTEN = Pattern.compile("([1-9][0-9]{0,2})([A-Ca-c])");

  /** Reads {@code 3A}; empty if the text is nothing of the kind. */
  public static Optional<At> parse(String text) {
    Matcher matcher = WRITTEN.matcher(text.strip());
    return matcher.matches()
        ? Optional.of(
            new At(
                Integer.parseInt(matcher.group(1)),
                Character.toUpperCase(matcher.group(2).charAt(0)) - 'A'))
        : Optional.empty();
  }

  /** The letter of the position. */
  public String letter() {
    return String.valueOf((char) ('A' + position));
  }

  @Override
  public int compareTo(At other) {
    return superset != other.superset
        ? Integer.compare(superset, other.superset)
        : Integer.compare(position, other.position);
  }

  @Override
  public String toString() {
    return superset + letter();
  }
}
