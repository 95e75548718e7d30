package counterset.review;

import counterset.explain.DifferenceWords;
import counterset.explain.Unmet;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.report.BetterPlan;
import counterset.report.json.CheckJson;
import counterset.typed.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A session that was read to be checked, and what a check has found.
 *
 * @param plan what it works out to
 * @param lines what each line was taken for, if it was typed
 * @param readAs what it is judged by, if it was typed
 * @param differences what the file says otherwise
 */
public record Checked(
    Plan plan,
    Catalogue catalogue,
    List<Taken> lines,
    List<String> readAs,
    List<Violation> differences) {

  /** What was found, as JSON. */
  public CheckJson json() {
    CheckJson json =
        CheckJson.of(
            plan,
            plan.canBeLed(),
            Unmet.rules(plan, catalogue),
            Unmet.wishes(plan, catalogue),
            differences);
    return lines.isEmpty() ? json : json.typed(lines, readAs);
  }

  /** How a typed session was read; nothing for a plan, which says everything itself. */
  public List<String> reading() {
    List<String> said = new ArrayList<>();
    if (!lines.isEmpty()) {
      said.add("What each line was taken for:");
      lines.stream().map(Taken::sentence).forEach(it -> said.add("  " + it));
      said.add("Read as:");
      readAs.forEach(it -> said.add("  " + it));
    }
    return said;
  }

  /** What was found, one line each. */
  public List<String> verdict() {
    List<String> said = new ArrayList<>();
    boolean feasible = plan.canBeLed();
    said.add(feasible ? "The session keeps every rule." : "The session breaks a rule.");
    Unmet.rules(plan, catalogue).forEach(fault -> said.add("  " + fault));
    List<String> wishes = Unmet.wishes(plan, catalogue);
    if (!wishes.isEmpty()) {
      said.add("Unmet wishes:");
      EmptySupersets.together(wishes).forEach(wish -> said.add("  " + wish));
    }
    if (!differences.isEmpty()) {
      said.add("The file says something else than its session works out to:");
      differences.forEach(difference -> said.add("  " + difference));
    }
    return said;
  }

  /** The best single change, if there is one. */
  public static List<String> best(Optional<BetterPlan> best) {
    List<String> lines = new ArrayList<>();
    if (best.isEmpty()) {
      lines.add("Best single change: none makes it better.");
      return lines;
    }
    lines.add("Best single change, " + best.get().worth() + ":");
    lines.addAll(told(best.get()));
    return lines;
  }

  /** What changes, and what that does. */
  public static List<String> told(BetterPlan better) {
    List<String> lines = new ArrayList<>();
    better.changes().forEach(change -> lines.add("  " + change + "."));
    better.differences().forEach(it -> lines.add("    " + DifferenceWords.line(it) + "."));
    return lines;
  }
}
