package counterset.cli;

import java.time.DateTimeException;
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
}
