package counterset.cli;

import counterset.explain.WeekWords;
import counterset.spelling.Nearest;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Days of the week from the command line: {@code mon}, {@code Monday}. */
final class Days {

  private static final int SHORTEST = 3;

  private Days() {}

  /**
   * The days.
   *
   * @param faults where to add what is wrong
   */
  static Set<DayOfWeek> read(String option, List<String> names, List<String> faults) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String name : names) {
      Optional<DayOfWeek> day = read(name.strip().toLowerCase(Locale.ROOT));
      day.ifPresentOrElse(
          days::add,
          () ->
              faults.add(
                  option
                      + " ("
                      + name
                      + ") is no day."
                      + Nearest.maybe(
                          name, Arrays.stream(DayOfWeek.values()).map(WeekWords::day).toList())
                      + " Name days as mon or monday, several with commas."));
    }
    return days;
  }

  private static Optional<DayOfWeek> read(String name) {
    return Arrays.stream(DayOfWeek.values())
        .filter(
            day ->
                name.length() >= SHORTEST
                    && WeekWords.day(day).toLowerCase(Locale.ROOT).startsWith(name))
        .findFirst();
  }
}
