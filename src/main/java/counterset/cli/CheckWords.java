package counterset.cli;

import counterset.explain.DifferenceWords;
import counterset.model.Catalogue;
import counterset.report.BetterPlan;
import counterset.report.json.CheckJson;
import counterset.typed.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a check has found, as lines to print and as JSON. */
record CheckWords(Checked checked, Catalogue catalogue) {

  CheckJson json() {
    CheckJson json =
        CheckJson.of(
            checked.plan(),
            checked.feasible(),
            checked.faults(catalogue),
            checked.wishes(catalogue),
            checked.differences());
    return checked.lines().isEmpty() ? json : json.typed(checked.lines(), checked.readAs());
  }

  /** How a typed session was read; nothing for a plan, which says everything itself. */
  List<String> reading() {
    List<String> lines = new ArrayList<>();
    if (!checked.lines().isEmpty()) {
      lines.add("What each line was taken for:");
      checked.lines().stream().map(Taken::sentence).forEach(it -> lines.add("  " + it));
      lines.add("Read as:");
      checked.readAs().forEach(it -> lines.add("  " + it));
    }
    return lines;
  }

  List<String> verdict() {
    List<String> lines = new ArrayList<>();
    boolean feasible = checked.feasible();
    lines.add(feasible ? "The session keeps every rule." : "The session breaks a rule.");
    checked.faults(catalogue).forEach(fault -> lines.add("  " + fault));
    List<String> wishes = checked.wishes(catalogue);
    if (!wishes.isEmpty()) {
      lines.add("Unmet wishes:");
      EmptySupersets.together(wishes).forEach(wish -> lines.add("  " + wish));
    }
    if (!checked.differences().isEmpty()) {
      lines.add("The file says something else than its session works out to:");
      checked.differences().forEach(difference -> lines.add("  " + difference));
    }
    return lines;
  }

  static List<String> best(Optional<BetterPlan> best) {
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
  static List<String> told(BetterPlan better) {
    List<String> lines = new ArrayList<>();
    better.changes().forEach(change -> lines.add("  " + change + "."));
    better.differences().forEach(it -> lines.add("    " + DifferenceWords.line(it) + "."));
    return lines;
  }
}
