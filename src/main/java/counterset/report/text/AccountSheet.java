package counterset.report.text;

import counterset.explain.Account.Line;
import counterset.explain.Account.Section;
import counterset.explain.BlockWords;
import counterset.explain.Difference;
import counterset.explain.ScoreWords;
import counterset.model.At;
import counterset.model.English;
import counterset.model.PlanScore;
import counterset.report.PlanAccount;
import counterset.report.PlanAccount.Place;
import counterset.report.PlanAccount.RunnerUp;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Where the points of a plan come from, as a coach reads it. */
public final class AccountSheet {

  private static final int SHOWN = 3;
  private static final String SOFT = "soft";

  private final PlanAccount all;
  private final Page page;

  private AccountSheet(PlanAccount all, boolean colour) {
    this.all = all;
    this.page = new Page(colour);
  }

  /**
   * Lines of at most 100 columns.
   *
   * @param colour whether to make some lines stand out on a terminal
   */
  public static String of(PlanAccount account, boolean colour) {
    return new AccountSheet(account, colour).write();
  }

  private String write() {
    PlanScore score = all.plan().score();
    page.strong("", all.plan().problem().title().toUpperCase(Locale.ROOT));
    page.plain("Score        ", score(score.hard(), score.medium(), score.soft()));
    page.plain("Limit        ", all.limit());
    List<Line> soft =
        all.account().sections().stream()
            .flatMap(section -> section.lines().stream())
            .filter(line -> line.level().equals(SOFT))
            .sorted(Comparator.comparingInt((Line line) -> -Math.abs(line.points())))
            .toList();
    most("Earns most   ", soft.stream().filter(line -> line.points() > 0).toList());
    most("Costs most   ", soft.stream().filter(line -> line.points() < 0).toList());
    all.account().sections().forEach(this::section);
    page.blank();
    page.strong("", "ALTOGETHER  " + score(score.hard(), score.medium(), score.soft()));
    keptOut();
    return page.text();
  }

  private static String score(int hard, int medium, int soft) {
    return ScoreWords.sentence(hard, medium, soft);
  }

  private void most(String lead, List<Line> lines) {
    String before = lead;
    for (Line line : lines.stream().limit(SHOWN).toList()) {
      page.plain(before, ScoreWords.points(line.points()) + "  " + words(line) + ".");
      before = " ".repeat(lead.length());
    }
  }

  private void section(Section section) {
    page.blank();
    String name = English.capital(BlockWords.name(all.plan())).toUpperCase(Locale.ROOT);
    String title =
        section
            .superset()
            .map(number -> name + " " + number + "  " + section.title())
            .orElse(section.title().toUpperCase(Locale.ROOT));
    page.strong("", title + "   " + ScoreWords.points(section.points(SOFT)));
    for (Line line : section.lines()) {
      String lead = String.format(Locale.ROOT, "%6s  ", ScoreWords.points(line.points()));
      String level = line.level().equals(SOFT) ? "" : " (" + line.level() + ")";
      page.plain(lead, words(line) + (level.isEmpty() ? "." : level));
    }
    section.notes().forEach(note -> page.plain("        ", note));
    section.superset().ifPresent(this::places);
  }

  /** A fault says itself where it is. */
  private static String words(Line line) {
    if (!line.level().equals(SOFT) || line.places().isEmpty()) {
      return English.capital(line.sentence());
    }
    return line.places().stream().map(At::toString).collect(Collectors.joining(" to "))
        + ": "
        + line.sentence();
  }

  private void places(int superset) {
    for (Place place : all.places()) {
      if (place.at().superset() != superset) {
        continue;
      }
      String lead = "        " + place.at() + "  ";
      String name = place.exercise().name();
      if (place.isKept()) {
        page.plain(lead, name + " is kept here as you asked.");
      } else if (place.runnersUp().isEmpty()) {
        page.plain(lead, "Nothing else could stand in for " + name + ".");
      } else {
        page.faint(lead, "Instead of " + name + ":");
        place.runnersUp().forEach(this::runnerUp);
      }
    }
  }

  private void runnerUp(RunnerUp other) {
    PlanScore score = other.score();
    PlanScore now = all.plan().score();
    int total = score.soft() - now.soft();
    String change = ScoreWords.points(total);
    String higher = higher(score, now);
    String partner = other.partner().map(p -> " with " + p.name()).orElse("");
    String why =
        other.differences().stream()
            .filter(difference -> difference.points() < 0 == total < 0)
            .findFirst()
            .or(() -> other.differences().stream().findFirst())
            .map(Difference::sentence)
            .map(": "::concat)
            .orElse(": worth the same");
    page.plain(
        String.format(Locale.ROOT, "            %6s  ", change),
        other.exercise().name() + partner + higher + why + ".");
  }

  private static String higher(PlanScore score, PlanScore now) {
    if (score.hard() != now.hard()) {
      return score.hard() < now.hard() ? " (breaks a rule)" : " (mends a rule)";
    }
    if (score.medium() != now.medium()) {
      return score.medium() < now.medium() ? " (a wish less)" : " (a wish more)";
    }
    return "";
  }

  private void keptOut() {
    page.blank();
    page.strong("", "KEPT OUT");
    if (all.keptOut().isEmpty() && all.narrowed().isEmpty()) {
      page.plain("  ", "Nothing.");
    }
    for (PlanAccount.Kept kept : all.keptOut()) {
      page.plain(
          "  - ",
          kept.name()
              + ": "
              + English.count(kept.number(), "exercise")
              + (kept.first().isEmpty() ? "." : ", first of all:"));
      kept.first().forEach(line -> page.plain("      ", line));
      page.faint("      ", "This rests on: " + kept.source());
    }
    all.narrowed().forEach(line -> page.plain("  - ", line));
  }
}
