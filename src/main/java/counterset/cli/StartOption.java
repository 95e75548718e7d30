package counterset.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** When a session begins, for calendars. */
final class StartOption {

  @Option(
      names = "--start",
      paramLabel = "HH:MM",
      description = "When the session begins, such as 18:30, for a calendar file (.ics).")
  String start;

  /** Adds what is wrong with the option. */
  void check(List<String> faults) {
    try {
      time();
    } catch (DateTimeException e) {
      faults.add("--start (" + start + ") is no time of day. Maybe write it like 18:30.");
    }
  }

  /** The time of day, if one is named and the option has no fault. */
  Optional<LocalTime> time() {
    return Optional.ofNullable(start).map(LocalTime::parse);
  }

  /**
   * Refuses files that need the day of the session where it is not known.
   *
   * @param files names given to {@code --write}
   */
  static void needsDay(List<String> files, Optional<LocalDate> day) {
    List<String> faults =
        files.stream()
            .filter(file -> day.isEmpty() && PlanFormats.isDated(file))
            .map(
                file ->
                    "--write ("
                        + file
                        + ") needs the day of the session. Maybe add --date 2026-03-02.")
            .toList();
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }
}
