package counterset.cli;

import counterset.json.Shown;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The options of a log, read from text by hand so that one run tells all that is wrong with them.
 */
final class Fields {

  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,3})?");
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,6}");
  private static final int LONGEST_NOTE = 2000;
  private static final int LONGEST_DAY = 1440;
  private static final double HEAVIEST = 500;

  private final List<String> faults;

  /**
   * A reader.
   *
   * @param faults where to add what is wrong
   */
  Fields(List<String> faults) {
    this.faults = faults;
  }

  /** A file that must be named. */
  String log(String text) {
    if (text == null) {
      faults.add("--log is missing. Name the file of the journal, such as --log anna.jsonl.");
    }
    return text;
  }

  Optional<LocalDate> date(String text) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      // LocalDate alone would also take years that no journal can hold.
      return Optional.of(LocalDate.parse(DATE.matcher(text).matches() ? text : ""));
    } catch (DateTimeParseException e) {
      faults.add(
          "--date ("
              + Shown.of(text)
              + ") must be a date as year, month and day, such as 2026-03-02.");
      return Optional.empty();
    }
  }

  /** The rating that every session needs, 0 to 10. */
  double rpe(String text) {
    if (text == null) {
      faults.add(
          "--rpe is missing: how hard the whole session felt, from 0 (rest) to 10 (maximal).");
      return 0;
    }
    double rpe = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : -1;
    if (rpe < 0 || rpe > 10 || 2 * rpe != Math.rint(2 * rpe)) {
      faults.add(
          "--rpe (" + Shown.of(text) + ") must be from 0 (rest) to 10 (maximal), in steps of 0.5.");
      return 0;
    }
    return rpe;
  }

  OptionalInt minutes(String text) {
    return whole("--minutes", text, LONGEST_DAY);
  }

  OptionalInt whole(String option, String text, int most) {
    if (text == null) {
      return OptionalInt.empty();
    }
    int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : 0;
    if (number < 1 || number > most) {
      faults.add(
          option + " (" + Shown.of(text) + ") must be a whole number from 1 to " + most + ".");
      return OptionalInt.empty();
    }
    return OptionalInt.of(number);
  }

  OptionalDouble mass(String text) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    double mass = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : 0;
    if (mass < 1 || mass > HEAVIEST) {
      faults.add(
          "--mass ("
              + Shown.of(text)
              + ") must be a body mass from 1 to 500 kilograms, such as 70 or 70.5.");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(mass);
  }

  Optional<String> note(String text) {
    if (text == null) {
      return Optional.empty();
    }
    if (text.isBlank() || text.chars().anyMatch(Character::isISOControl)) {
      faults.add("--note (" + Shown.of(text) + ") must be one line of text.");
    } else if (text.length() > LONGEST_NOTE) {
      faults.add(
          "--note ("
              + Shown.of(text)
              + ") must have no more than "
              + LONGEST_NOTE
              + " characters.");
    }
    return Optional.of(text.strip());
  }
}
