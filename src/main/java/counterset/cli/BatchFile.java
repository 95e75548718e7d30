package counterset.cli;

import counterset.batch.Fingerprint;
import counterset.batch.Finished;
import counterset.batch.Manifest;
import counterset.batch.Outcome;
import counterset.batch.Outcome.Figures;
import counterset.batch.Status;
import counterset.explain.Unmet;
import counterset.intake.Readers;
import counterset.json.BadRequest;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.problem.WeekReader;
import counterset.report.file.Handout;
import counterset.report.file.WeekHandout;
import counterset.report.file.WholeFiles;
import counterset.report.html.Pictures;
import counterset.solve.Limit;
import counterset.solve.SessionPlanner;
import counterset.solve.WeekPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Does one file of a folder after the other; safe to share between threads.
 *
 * @param results the folder of the results
 * @param kinds the endings of the result files, without a dot
 * @param given what counts for every file: catalogue, effort, seed and version
 * @param earlier what earlier runs have finished, by the name of the file
 */
record BatchFile(
    Path results,
    List<String> kinds,
    Limit limit,
    Optional<Long> seed,
    Catalogue catalogue,
    Pictures pictures,
    String given,
    Map<String, Finished> earlier,
    Manifest manifest) {

  /**
   * What came of a file.
   *
   * @param kept whether it was finished before
   * @param fingerprint none if the file is to be read again the next time anyway
   */
  record Done(Outcome outcome, boolean kept, Optional<String> fingerprint) {}

  /** Plans a file unless that is finished; whatever fails is told in the outcome. */
  Done done(Path file) {
    String name = file.getFileName().toString();
    try {
      byte[] bytes = JsonFiles.bytes(file);
      String fingerprint = Fingerprint.of(bytes, List.of(given));
      Finished before = earlier.get(name);
      if (before != null && before.fingerprint().equals(fingerprint) && isThere(before.outcome())) {
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
    String more = note + (isAnyThere(name) ? "; results of an earlier run are left" : "");
    return new Done(
        new Outcome(name, status, Optional.empty(), more, faults), false, Optional.empty());
  }

  /** An infeasible file has no results. */
  private boolean isThere(Outcome outcome) {
    return outcome.status() != Status.PLANNED
        || kinds.stream().allMatch(kind -> Files.isRegularFile(result(outcome.file(), kind)));
  }

  private boolean isAnyThere(String name) {
    return kinds.stream().anyMatch(kind -> Files.isRegularFile(result(name, kind)));
  }

  private Path result(String name, String kind) {
    return results.resolve(name.substring(0, name.lastIndexOf('.')) + "." + kind);
  }

  private Outcome plan(String name, JsonDocument document) {
    return WeekReader.isWeek(document) ? week(name, document) : session(name, document);
  }

  private Outcome session(String name, JsonDocument document) {
    Problem read = Readers.problems(catalogue).read(document, "");
    Problem problem = seed.map(read::withSeed).orElse(read);
    Plan plan = new SessionPlanner(catalogue, Version.current(), 1).plan(problem, limit);
    boolean feasible = plan.canBeLed();
    if (feasible) {
      write(name, kind -> Handout.KINDS.render("." + kind, new Handout(plan, catalogue, pictures)));
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
    WeekProblem read = Readers.weeks(catalogue).read(document, "");
    WeekProblem problem = seed.map(read::withSeed).orElse(read);
    WeekPlan week = new WeekPlanner(catalogue, Version.current()).plan(problem, limit);
    WeekHandout files =
        new WeekHandout(
            List.of(week), List.of(), catalogue, Optional.empty(), Optional.empty(), pictures);
    boolean feasible = week.canBeLed();
    if (feasible) {
      write(name, kind -> WeekHandout.KINDS.render("." + kind, files));
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
            plans.stream().mapToInt(BatchFile::covered).sum(),
            plans.stream().mapToInt(plan -> plan.coverage().size()).sum()),
        plans.size() + " sessions");
  }

  private static int covered(Plan plan) {
    return (int)
        plan.coverage().stream().filter(target -> target.direct() >= target.minSets()).count();
  }

  private Outcome outcome(
      String name, List<Plan> plans, boolean feasible, Figures figures, String about) {
    List<String> notes = new ArrayList<>(about.isEmpty() ? List.of() : List.of(about));
    List<String> faults = new ArrayList<>();
    if (!feasible) {
      notes.add(
          "no feasible session" + (isAnyThere(name) ? "; results of an earlier run are left" : ""));
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

  private void write(String name, UnaryOperator<String> text) {
    Map<Path, String> texts = new LinkedHashMap<>();
    kinds.forEach(kind -> texts.put(result(name, kind), text.apply(kind)));
    WholeFiles.write(texts);
  }
}
