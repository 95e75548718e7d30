package counterset.batch;

import counterset.batch.Outcome.Figures;
import counterset.explain.Unmet;
import counterset.json.BadRequest;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.TargetCoverage;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.problem.ProblemReader;
import counterset.problem.WeekReader;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import counterset.search.WeekPlanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans one file of a folder after the other; safe to share between threads. */
public final class BatchPlanner {

  private final Catalogue catalogue;
  private final ProblemReader problems;
  private final WeekReader weeks;
  private final Limit limit;
  private final Optional<Long> seed;
  private final String version;
  private final Results results;
  private final Manifest manifest;
  private final Map<String, Finished> earlier;
  private final String given;

  /**
   * A planner that goes on where an earlier one was stopped.
   *
   * @param seed for all, instead of that of each file
   * @param version of this program
   * @throws IOException if the manifest cannot be read
   */
  public BatchPlanner(
      Catalogue catalogue,
      ProblemReader problems,
      WeekReader weeks,
      Effort effort,
      Optional<Long> seed,
      String version,
      Results results,
      Manifest manifest)
      throws IOException {
    this.catalogue = catalogue;
    this.problems = problems;
    this.weeks = weeks;
    this.limit = Limit.of(effort);
    this.seed = seed;
    this.version = version;
    this.results = results;
    this.manifest = manifest;
    this.earlier = manifest.read();
    // What counts for every file, so that a change of it does all of them again.
    this.given =
        Fingerprint.of(
            List.of(
                catalogue.toString(), effort.id(), seed.map(Object::toString).orElse(""), version));
  }

  /**
   * What came of a file.
   *
   * @param kept whether it was finished before
   * @param fingerprint none if the file is to be read again the next time anyway
   */
  public record Done(Outcome outcome, boolean kept, Optional<String> fingerprint) {}

  /** Plans a file unless that is finished; whatever fails is told in the outcome. */
  public Done done(Path file) {
    String name = file.getFileName().toString();
    try {
      byte[] bytes = JsonFiles.bytes(file);
      String fingerprint = Fingerprint.of(bytes, List.of(given));
      Finished before = earlier.get(name);
      if (before != null
          && before.fingerprint().equals(fingerprint)
          && isStillThere(before.outcome())) {
        return new Done(before.outcome(), true, Optional.of(fingerprint));
      }
      Outcome outcome = plan(name, JsonFiles.parse(name, bytes));
      manifest.add(new Finished(fingerprint, outcome));
      return new Done(outcome, false, Optional.of(fingerprint));
    } catch (InvalidInputException e) {
      List<String> faults = e.violations().stream().map(Violation::toString).toList();
      return failed(
          name, Status.BROKEN, faults.size() == 1 ? "1 fault" : faults.size() + " faults", faults);
    } catch (BadRequest e) {
      return failed(name, Status.FAILED, "not written", e.lines());
    } catch (IOException e) {
      return failed(
          name, Status.FAILED, "not written", List.of(name + ": cannot be written: " + e));
    } catch (RuntimeException e) {
      return failed(
          name, Status.FAILED, "internal error", List.of(name + ": Internal error: " + e));
    }
  }

  private Done failed(String name, Status status, String note, List<String> faults) {
    String more = note + (results.isAnyThere(name) ? "; results of an earlier run are left" : "");
    return new Done(
        new Outcome(name, status, Optional.empty(), more, faults), false, Optional.empty());
  }

  /** An infeasible file has no results. */
  private boolean isStillThere(Outcome outcome) {
    return outcome.status() != Status.PLANNED || results.areAllThere(outcome.file());
  }

  private Outcome plan(String name, JsonDocument document) {
    return WeekReader.isWeek(document) ? week(name, document) : session(name, document);
  }

  private Outcome session(String name, JsonDocument document) {
    Problem read = problems.read(document, "");
    Problem problem = seed.map(read::withSeed).orElse(read);
    Plan plan = new SessionPlanner(catalogue, version, 1).plan(problem, limit);
    boolean feasible = plan.canBeLed();
    if (feasible) {
      results.write(name, plan);
    }
    return outcome(
        name,
        List.of(plan),
        feasible,
        Figures.of(
            plan.score(),
            plan.totals().seconds(),
            problem.minutes(),
            covered(plan),
            plan.coverage().size()),
        "");
  }

  private Outcome week(String name, JsonDocument document) {
    WeekProblem read = weeks.read(document, "");
    WeekProblem problem = seed.map(read::withSeed).orElse(read);
    WeekPlan week = new WeekPlanner(catalogue, version).plan(problem, limit);
    boolean feasible = week.canBeLed();
    if (feasible) {
      results.write(name, week);
    }
    List<Plan> plans = week.plans();
    return outcome(
        name,
        plans,
        feasible,
        Figures.of(
            week.score(),
            plans.stream().mapToInt(plan -> plan.totals().seconds()).sum(),
            plans.stream().mapToInt(plan -> plan.problem().minutes()).sum(),
            plans.stream().mapToInt(BatchPlanner::covered).sum(),
            plans.stream().mapToInt(plan -> plan.coverage().size()).sum()),
        plans.size() + " sessions");
  }

  private static int covered(Plan plan) {
    return (int) plan.coverage().stream().filter(TargetCoverage::isCovered).count();
  }

  private Outcome outcome(
      String name, List<Plan> plans, boolean feasible, Figures figures, String about) {
    List<String> notes = new ArrayList<>(about.isEmpty() ? List.of() : List.of(about));
    List<String> faults = new ArrayList<>();
    if (!feasible) {
      notes.add(
          "no feasible session"
              + (results.isAnyThere(name) ? "; results of an earlier run are left" : ""));
      plans.forEach(plan -> faults.addAll(Unmet.rules(plan, catalogue)));
      faults.replaceAll(fault -> name + ": " + fault);
      faults.add(name + ": No feasible session. What would free it is told by plan or week.");
    } else if (figures.medium() < 0) {
      notes.add("wishes unmet");
    }
    return new Outcome(
        name,
        feasible ? Status.PLANNED : Status.INFEASIBLE,
        Optional.of(figures),
        String.join("; ", notes),
        faults);
  }
}
