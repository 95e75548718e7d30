package counterset.training;

import counterset.journal.Entry;

/**
 * Energy cost by metabolic equivalents of the Compendium of Physical Activities (Herrmann SD et
 * al., J Sport Health Sci 2024;13(1):6-12).
 *
 * <p>Gross: what the body uses at rest is in it. The formula takes 3.5 mL of oxygen per kilogram
 * and minute for one MET and 5 kcal for a litre (ACSM's Guidelines for Exercise Testing and
 * Prescription, metabolic calculations; the page from memory). It gives 1.05 times what MET x kg x
 * hours would.
 */
public final class Energy {

  /** The formula as it is named beside its results. */
  public static final String FORMULA = "kcal = MET x 3.5 x kg / 200 x minutes";

  private Energy() {}

  /** MET-minutes of a session: the METs of its parts times their minutes. */
  public static double metMinutes(Entry entry) {
    return entry.energy().stream().mapToDouble(block -> block.met() * block.seconds() / 60.0).sum();
  }

  /**
   * Kilocalories.
   *
   * @param kg body mass in kilograms
   */
  public static double kcal(double metMinutes, double kg) {
    return metMinutes * 3.5 * kg / 200;
  }
}
