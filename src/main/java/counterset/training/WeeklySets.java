package counterset.training;

import counterset.journal.Entry;
import counterset.journal.MuscleSets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The sets of one muscle group within a week.
 *
 * @param muscle its id
 * @param direct sets in which it is a primary muscle group
 * @param indirect sets in which it helps
 * @param days different days with a direct set, 0 to 7
 */
public record WeeklySets(String muscle, int direct, int indirect, int days) {

  /**
   * The days a week on which all major muscle groups should be strengthened (WHO guidelines on
   * physical activity and sedentary behaviour, 2020: adults).
   */
  public static final int LEAST_DAYS = 2;

  /**
   * Counts a week.
   *
   * @param muscles the ids to count, in the order wanted; those that only the entries know follow
   */
  public static List<WeeklySets> of(Week week, Collection<String> muscles) {
    Set<String> others = new TreeSet<>();
    week.entries().forEach(entry -> entry.muscles().forEach(muscle -> others.add(muscle.muscle())));
    others.removeAll(muscles);
    List<String> all = new ArrayList<>(muscles);
    all.addAll(others);
    return all.stream().map(muscle -> count(week, muscle)).toList();
  }

  private static WeeklySets count(Week week, String muscle) {
    int direct = 0;
    int indirect = 0;
    Set<LocalDate> days = new TreeSet<>();
    for (Entry entry : week.entries()) {
      for (MuscleSets sets : entry.muscles()) {
        if (sets.muscle().equals(muscle)) {
          direct += sets.direct();
          indirect += sets.indirect();
          if (sets.direct() > 0) {
            days.add(entry.date());
          }
        }
      }
    }
    return new WeeklySets(muscle, direct, indirect, days.size());
  }

  /**
   * Fractional counting: an indirect set is half a set (Pelland JC et al., The resistance training
   * dose-response, SportRxiv 2024).
   */
  public double sets() {
    return direct + 0.5 * indirect;
  }

  /** Where that lies among the published ranges. */
  public SetRange range() {
    return SetRange.of(sets());
  }
}
