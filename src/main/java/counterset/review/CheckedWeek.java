package counterset.review;

import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.report.json.CheckJson;
import counterset.report.text.ScoreTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A planned week that was read to be checked: every day, and what the week asks of its days
 * together.
 *
 * @param days by their names, in order
 */
public record CheckedWeek(WeekPlan week, Map<String, Checked> days, Catalogue catalogue) {

  /** The rules of the week that its days together break, one line each. */
  public List<String> faults() {
    return new WeekWords(week, catalogue).brokenRules();
  }

  private List<String> wishes() {
    return new WeekWords(week, catalogue).unmetWishes();
  }

  private boolean feasible() {
    return faults().isEmpty() && days.values().stream().allMatch(it -> it.plan().canBeLed());
  }

  /** What was found, as JSON. */
  public String json() {
    Map<String, CheckJson> json = new LinkedHashMap<>();
    days.forEach((day, it) -> json.put(day, it.json()));
    return CheckJson.week(feasible(), faults(), wishes(), json);
  }

  /** What was found, as text. */
  public String text(boolean colour) {
    List<String> lines = new ArrayList<>();
    lines.add(feasible() ? "The week keeps every rule." : "The week breaks a rule.");
    faults().forEach(fault -> lines.add("  " + fault));
    if (!wishes().isEmpty()) {
      lines.add("Unmet wishes of the week:");
      wishes().forEach(wish -> lines.add("  " + wish));
    }
    StringBuilder text = new StringBuilder(String.join("\n", lines) + "\n");
    days.forEach(
        (day, checked) ->
            text.append("\n" + day.toUpperCase(Locale.ROOT) + "\n")
                .append(String.join("\n", checked.verdict()) + "\n")
                .append(ScoreTable.of(checked.plan(), catalogue, colour)));
    return text.toString();
  }
}
