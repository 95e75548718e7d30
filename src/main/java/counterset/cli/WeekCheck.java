package counterset.cli;

import counterset.explain.WeekWords;
import counterset.intake.GivenPlan;
import counterset.intake.Readers;
import counterset.json.JsonDocument;
import counterset.model.Catalogue;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.problem.WeekPlanFile;
import counterset.report.json.CheckJson;
import counterset.report.text.ScoreTable;
import counterset.review.Checked;
import counterset.solve.WeekPlanner;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Checks every day of a planned week, and what the week asks of its days together. */
final class WeekCheck {

  private final Shell shell;
  private final Catalogue catalogue;
  private final WeekPlan week;
  private final Map<String, Checked> days = new LinkedHashMap<>();

  WeekCheck(Shell shell, Catalogue catalogue, JsonDocument document) {
    this.shell = shell;
    this.catalogue = catalogue;
    WeekPlanFile read = Readers.weekPlans(catalogue).read(document);
    WeekProblem problem = read.problem();
    String version = Version.current();
    List<Session> sessions = new ArrayList<>();
    for (int i = 0; i < read.plans().size(); i++) {
      GivenPlan given = GivenPlan.of(read.plans().get(i), catalogue, version);
      sessions.add(given.plan().session());
      days.put(
          WeekWords.day(problem.sessions().get(i).day()),
          new Checked(given.plan(), catalogue, List.of(), List.of(), given.differences()));
    }
    SolverNote note = new SolverNote(problem.seed(), "none", version, 0, true);
    this.week = new WeekPlanner(catalogue, version).score(problem, sessions, note);
  }

  /** Prints it and returns the exit status: that of the worst day. */
  int run(Format format) {
    WeekWords words = new WeekWords(week, catalogue);
    List<String> faults = words.brokenRules();
    List<String> wishes = words.unmetWishes();
    boolean feasible =
        faults.isEmpty() && days.values().stream().allMatch(it -> it.plan().canBeLed());
    if (format == Format.JSON) {
      Map<String, CheckJson> json = new LinkedHashMap<>();
      days.forEach((day, it) -> json.put(day, it.json()));
      shell.out().print(CheckJson.week(feasible, faults, wishes, json));
    } else {
      text(feasible, faults, wishes);
    }
    int worst = days.values().stream().mapToInt(Exit::of).max().orElse(Exit.DONE);
    return faults.isEmpty() ? worst : Exit.INFEASIBLE;
  }

  private void text(boolean feasible, List<String> faults, List<String> wishes) {
    List<String> lines = new ArrayList<>();
    lines.add(feasible ? "The week keeps every rule." : "The week breaks a rule.");
    faults.forEach(fault -> lines.add("  " + fault));
    if (!wishes.isEmpty()) {
      lines.add("Unmet wishes of the week:");
      wishes.forEach(wish -> lines.add("  " + wish));
    }
    lines.forEach(line -> shell.out().print(line + "\n"));
    days.forEach(
        (day, checked) -> {
          shell.out().print("\n" + day.toUpperCase(Locale.ROOT) + "\n");
          checked.verdict().forEach(line -> shell.out().print(line + "\n"));
          shell.out().print(ScoreTable.of(checked.plan(), catalogue, shell.colour()));
        });
  }
}
