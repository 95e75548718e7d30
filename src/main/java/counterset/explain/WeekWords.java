package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Muscle;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.score.Constraints;
import counterset.score.DayConstraint;
import counterset.score.Level;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
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
   * @param id of the constraint
   */
  public String counted(String id) {
    DayConstraint constraint = Constraints.ofWeek(id);
    List<WeekMatch> matches =
        week.matches().stream().filter(match -> match.constraint().equals(id)).toList();
    List<String> details =
        matches.stream()
            .map(match -> subject(match) + " (" + constraint.said(match, week, days(match)) + ")")
            .distinct()
            .toList();
    return constraint.topic()
        + ": "
        + constraint.counted(matches.size())
        + ": "
        + String.join("; ", details)
        + ".";
  }

  /** Every rule of the week that is broken, one line each. */
  public List<String> brokenRules() {
    return matches(Level.HARD);
  }

  /** Every unmet wish of the week that matters most, one line each. */
  public List<String> unmetWishes() {
    return matches(Level.MEDIUM);
  }

  private List<String> matches(Level level) {
    return week.score().lines().stream()
        .filter(line -> line.level().equals(level.id()) && line.matches() > 0)
        .map(line -> counted(line.id()))
        .toList();
  }

  private String days(WeekMatch match) {
    return English.list(match.sessions().stream().map(this::session).toList());
  }

  private String session(int number) {
    return number < 0 ? "before the week" : day(week.problem().sessions().get(number).day());
  }

  private String subject(WeekMatch match) {
    String id = match.subject();
    return Optional.ofNullable(catalogue.muscles().get(id))
        .map(Muscle::name)
        .or(() -> Optional.ofNullable(catalogue.exercises().get(id)).map(Exercise::name))
        .orElse(English.capital(id.replace('-', ' ')));
  }
}
