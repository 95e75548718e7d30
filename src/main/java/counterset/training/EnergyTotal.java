package counterset.training;

import counterset.journal.Entry;
import java.util.OptionalDouble;

/**
 * The energy cost of several sessions.
 *
 * @param metMinutes of all of them
 * @param kcal of those whose body mass is known
 * @param sessions how many there are
 * @param weighed how many of them have a known body mass
 */
public record EnergyTotal(double metMinutes, double kcal, int sessions, int weighed) {

  /**
   * Adds up a week.
   *
   * @param mass the body mass in kilograms for sessions that were logged without one
   */
  static EnergyTotal of(Week week, OptionalDouble mass) {
    double metMinutes = 0;
    double kcal = 0;
    int weighed = 0;
    for (Entry entry : week.entries()) {
      OptionalDouble kg = entry.mass().isPresent() ? entry.mass() : mass;
      metMinutes += Energy.metMinutes(entry);
      if (kg.isPresent()) {
        kcal += Energy.kcal(Energy.metMinutes(entry), kg.getAsDouble());
        weighed++;
      }
    }
    return new EnergyTotal(metMinutes, kcal, week.entries().size(), weighed);
  }
}
