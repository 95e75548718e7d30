package counterset.training;

import counterset.journal.Entry;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a journal comes to in the seven days that end on a date, and the load of the weeks before.
 *
 * @param weeks the oldest one first; the last one is the one summed up
 * @param muscles the sets of that week
 * @param energy the energy cost of that week
 */
public record Summary(List<Week> weeks, List<WeeklySets> muscles, EnergyTotal energy) {

  public Summary {
    weeks = List.copyOf(weeks);
    muscles = List.copyOf(muscles);
  }

  /**
   * Sums up.
   *
   * @param last the last day of the week
   * @param weeks how many weeks of load to show, at least 1
   * @param muscles the ids of the muscle groups to count, in the order wanted
   * @param mass the body mass in kilograms for sessions that were logged without one
   */
  public static Summary of(
      List<Entry> entries,
      LocalDate last,
      int weeks,
      Collection<String> muscles,
      OptionalDouble mass) {
    List<Week> all =
        IntStream.range(0, weeks)
            .mapToObj(i -> new Week(last.minusDays((long) Week.DAYS * (weeks - 1 - i)), entries))
            .toList();
    Week week = all.get(weeks - 1);
    return new Summary(all, WeeklySets.of(week, muscles), EnergyTotal.of(week, mass));
  }

  /** The week summed up. */
  public Week week() {
    return weeks.get(weeks.size() - 1);
  }
}
