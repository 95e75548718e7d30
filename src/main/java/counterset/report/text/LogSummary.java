package counterset.report.text;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.report.Numbers;
import counterset.training.Energy;
import counterset.training.EnergyTotal;
import counterset.training.Summary;
import counterset.training.Week;
import counterset.training.WeeklySets;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a week came to: load, sets by muscle group, energy; each with its definition and source. */
public final class LogSummary {

  private final Page page;
  private final Summary summary;
  private final Catalogue catalogue;

  private LogSummary(Page page, Summary summary, Catalogue catalogue) {
    this.page = page;
    this.summary = summary;
    this.catalogue = catalogue;
  }

  /** Lines of at most 100 columns. */
  public static String of(Summary summary, Catalogue catalogue, boolean colour) {
    Page page = new Page(colour);
    LogSummary text = new LogSummary(page, summary, catalogue);
    text.load();
    text.sets();
    text.energy();
    return page.text();
  }

  private void load() {
    page.strong("", "LOAD");
    row("Week", "Sessions", "Minutes", "Load", "Monotony", "Strain");
    for (Week week : summary.weeks()) {
      row(
          week.first() + " to " + week.last(),
          String.valueOf(week.entries().size()),
          String.valueOf(week.minutes()),
          Numbers.rounded(week.load(), 1),
          figure(week.monotony(), 2),
          figure(week.strain(), 0));
    }
    if (summary.week().monotony().orElse(0) > Week.MONOTONOUS) {
      page.strong(
          "  ! ",
          "Monotony is above "
              + Numbers.fixed(Week.MONOTONOUS, 1)
              + ": the days are much alike. Maybe put an easy day between hard ones.");
    }
    if (summary.week().monotony().isEmpty() && summary.week().load() > 0) {
      page.strong("  ! ", "Every day had the same load: monotony has no bound. Maybe rest a day.");
    }
    page.faint(
        "  ",
        "Load: RPE (CR-10) x minutes of the whole session (Foster 2001). Monotony: mean of the"
            + " seven daily loads over their standard deviation, the population's; days without a"
            + " session count as 0. Strain: load x monotony (Foster 1998). A monotony above 2.0 is"
            + " commonly taken as a warning (Foster 1998, quoted from memory).");
  }

  private void row(String week, String... figures) {
    StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-24s", week));
    for (String figure : figures) {
      line.append(String.format(Locale.ROOT, "%10s", figure));
    }
    page.plain("  ", line.toString());
  }

  private static String figure(OptionalDouble number, int decimals) {
    return number.isPresent() ? Numbers.fixed(number.getAsDouble(), decimals) : "-";
  }

  private void sets() {
    Week week = summary.week();
    page.blank();
    page.strong("", "SETS BY MUSCLE GROUP, " + week.first() + " to " + week.last());
    setsRow("Muscle group", "Direct", "Indirect", "Sets", "Days", "Range");
    for (WeeklySets sets : summary.muscles()) {
      setsRow(
          Names.muscle(sets.muscle(), catalogue),
          String.valueOf(sets.direct()),
          String.valueOf(sets.indirect()),
          Numbers.rounded(sets.sets(), 1),
          String.valueOf(sets.days()),
          sets.range().words() + (isSeldom(sets) ? ", on one day only" : ""));
    }
    page.faint(
        "  ",
        "Sets: direct + half of the indirect ones (Pelland 2024). Ranges: at least 4 a week (Iversen"
            + " 2021); below 5, 5 to 9, 10 and more (Schoenfeld 2017). Days: with a direct set; at"
            + " least 2 for every major muscle group (WHO 2020).");
  }

  private static boolean isSeldom(WeeklySets sets) {
    return sets.days() > 0 && sets.days() < WeeklySets.LEAST_DAYS;
  }

  private void setsRow(
      String muscle, String direct, String indirect, String sets, String days, String range) {
    String format = "%-24s%8s%10s%8s%6s   %s";
    page.plain(
        "  ", String.format(Locale.ROOT, format, muscle, direct, indirect, sets, days, range));
  }

  private void energy() {
    EnergyTotal energy = summary.energy();
    page.blank();
    page.strong("", "ENERGY");
    page.plain("  ", Numbers.fixed(energy.metMinutes(), 0) + " MET-minutes" + kcal(energy));
    page.faint(
        "  ",
        "METs: Compendium of Physical Activities, by exercise and in the edition that the entry"
            + " names; rests count like the exercises around them. "
            + Energy.FORMULA
            + " (ACSM), gross: what the body uses at rest is in it. An estimate, and people differ"
            + " widely.");
  }

  private static String kcal(EnergyTotal energy) {
    if (energy.weighed() == 0) {
      return energy.sessions() == 0 ? "" : "; no kcal without a body mass, name it with --mass KG";
    }
    String some =
        energy.weighed() == energy.sessions()
            ? ""
            : ", of the "
                + English.count(energy.weighed(), "session")
                + " out of "
                + energy.sessions()
                + " with a known body mass";
    return ", " + Numbers.fixed(energy.kcal(), 0) + " kcal" + some;
  }
}
