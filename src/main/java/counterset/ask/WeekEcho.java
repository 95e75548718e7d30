package counterset.ask;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says in plain lines how the ask for a week was read. */
final class WeekEcho {

  private WeekEcho() {}

  /**
   * The lines.
   *
   * @param spread whether the days were assumed
   * @param byDay the lines of each day's own reading, Monday first
   */
  static List<String> lines(
      boolean spread, boolean recoveryIsRule, Map<DayOfWeek, List<String>> byDay) {
    List<String> lines = new ArrayList<>();
    int count = byDay.size();
    lines.add(
        count
            + (count == 1 ? " session: " : " sessions: ")
            + byDay.keySet().stream().map(DayNames::of).collect(Collectors.joining(", "))
            + (spread ? " (assumed: spread evenly from Monday on)" : ""));
    if (recoveryIsRule) {
      lines.add("48 h of recovery between sessions of a muscle group: a rule");
    }
    List<String> all =
        new ArrayList<>(byDay.isEmpty() ? List.of() : byDay.values().iterator().next());
    byDay.values().forEach(all::retainAll);
    lines.addAll(all);
    byDay.forEach(
        (day, own) ->
            own.stream()
                .filter(line -> !all.contains(line))
                .forEach(line -> lines.add(DayNames.of(day) + ": " + line)));
    return lines;
  }
}
