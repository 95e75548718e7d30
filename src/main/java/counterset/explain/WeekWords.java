package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Identified;
import counterset.model.Muscle;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekPlan.WeekSets;
import counterset.planning.constraints.WeekConstraint;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the constraints of a week found, as sentences. */
public final class WeekWords {

  private final WeekPlan week;
  private final Catalogue catalogue;

  public WeekWords(WeekPlan week, Catalogue catalogue) {
    this.week = week;
    this.catalogue = catalogue;
  }

  /** The full name of a day. */
  public static String day(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The first three letters of its name. */
  public static String shortDay(DayOfWeek day) {
    return day(day).substring(0, 3);
  }

  /**
   * One line: what a constraint counted and where, without the points.
   *
   * @param constraint its id
   */
  public String counted(String constraint) {
    List<WeekMatch> matches =
        week.matches().stream().filter(match -> match.constraint().equals(constraint)).toList();
    List<String> details = matches.stream().map(this::detail).distinct().toList();
    return label(constraint, matches.size()) + ": " + String.join("; ", details) + ".";
  }

  /** Every rule of the week that is broken, one line each. */
  public List<String> brokenRules() {
    return matches("hard");
  }

  /** Every unmet wish of the week that matters most, one line each. */
  public List<String> unmetWishes() {
    return matches("medium");
  }

  private List<String> matches(String level) {
    List<String> lines = new ArrayList<>();
    week.score().lines().stream()
        .filter(line -> line.level().equals(level) && line.matches() > 0)
        .forEach(line -> lines.add(counted(line.id())));
    return lines;
  }

  private static String label(String constraint, int matches) {
    return switch (constraint(constraint)) {
      case WEEK_FREQUENCY -> "On too few days of the week: " + English.count(matches, "target");
      case RECOVERY_SHORT -> "Less than 48 h of recovery: " + English.count(matches, "time");
      case WEEKLY_VOLUME -> "Weekly sets out of range: " + English.count(matches, "target");
      case WEEK_REPEATED -> "Again too soon: " + English.count(matches, "time");
    };
  }

  private String detail(WeekMatch match) {
    String subject = subject(match.subject());
    String days = English.list(match.sessions().stream().map(this::session).toList());
    return switch (constraint(match.constraint())) {
      case WEEK_FREQUENCY -> subject + " (" + (days.isEmpty() ? "on no day" : "only " + days) + ")";
      case RECOVERY_SHORT, WEEK_REPEATED -> subject + " (" + days + ")";
      case WEEKLY_VOLUME -> subject + sets(match);
    };
  }

  private String sets(WeekMatch match) {
    Optional<WeekSets> sets =
        week.sets().stream().filter(it -> it.muscle().equals(match.subject())).findFirst();
    return sets.map(
            it ->
                " ("
                    + halves(it.halfSets())
                    + ", wanted "
                    + it.range().least()
                    + " to "
                    + it.range().most()
                    + ")")
        .orElse("");
  }

  /** Half sets as sets: {@code 4}, {@code 1.5}. */
  public static String halves(int halfSets) {
    return halfSets / 2 + (halfSets % 2 == 0 ? "" : ".5");
  }

  private String session(int number) {
    return number < 0 ? "before the week" : day(week.problem().sessions().get(number).day());
  }

  private String subject(String id) {
    return Optional.ofNullable(catalogue.muscles().get(id))
        .map(Muscle::name)
        .or(() -> Optional.ofNullable(catalogue.exercises().get(id)).map(Exercise::name))
        .orElse(English.capital(id.replace('-', ' ')));
  }

  private static WeekConstraint constraint(String id) {
    return Identified.find(WeekConstraint.class, id)
        .orElseThrow(
            () -> new IllegalArgumentException("The constraint (" + id + ") is not known."));
  }
}
