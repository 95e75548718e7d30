package counterset.problem;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Shown;
import counterset.json.Violation;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.spelling.Nearest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads plan files, edited or written by hand included: the problem and the decisions only. */
public final class PlanFileReader {

  /** The version of the plan format. */
  public static final int VERSION = 1;

  private static final List<String> NAMES =
      List.of(
          "plan",
          "problem",
          "score",
          "bound",
          "timeline",
          "supersets",
          "coverage",
          "patterns",
          "changeovers",
          "tracks",
          "equipmentList",
          "totals",
          "cautions",
          "solver",
          "loads");

  private final ProblemReader problems;
  private final Catalogue catalogue;

  public PlanFileReader(ProblemReader problems, Catalogue catalogue) {
    this.problems = problems;
    this.catalogue = catalogue;
  }

  /** Whether a document says of itself that it is the plan of a session, right or wrong. */
  public static boolean isPlan(JsonDocument document) {
    return document.tree().has("plan");
  }

  /**
   * Reads a plan file.
   *
   * @throws InvalidInputException with all its faults
   */
  public PlanFile read(Path file) {
    return read(JsonFiles.read(file));
  }

  /**
   * Reads a plan.
   *
   * @throws InvalidInputException with all its faults
   */
  public PlanFile read(JsonDocument document) {
    Faults faults = new Faults(document);
    Cursor plan = Cursor.at(faults, "");
    if (!isPlan(plan)) {
      faults.throwIfAny();
    }
    checkNames(plan);
    Optional<Problem> problem = problem(plan, document, faults);
    int positions = problem.map(Problem::clock).orElse(Intervals.EXPRESS).perSuperset();
    List<PlannedSuperset> supersets = supersets(plan.field("supersets"), positions);
    List<Map<At, String>> modifications =
        new ModificationList(catalogue, problem.map(Problem::tracks).orElse(List.of()), supersets)
            .read(plan.field("timeline"));
    Interludes interludes = Interludes.read(plan.field("timeline"), catalogue);
    faults.throwIfAny();
    return new PlanFile(
        document,
        problem.orElseThrow(),
        supersets,
        interludes.warmUp(),
        interludes.coolDown(),
        modifications);
  }

  private static boolean isPlan(Cursor plan) {
    Cursor version = plan.field("plan");
    if (!version.isPresent()) {
      version.fault(
          "The plan is missing: this is no plan file, which begins with the version (1) of its"
              + " format.");
      return false;
    }
    Optional<Integer> number = version.integer();
    number
        .filter(value -> value != VERSION)
        .ifPresent(value -> version.fault("The plan (" + value + ") must be 1."));
    return number.isPresent() && number.get() == VERSION;
  }

  /** A name that no plan has is usually a typing error, and would be passed over in silence. */
  private static void checkNames(Cursor plan) {
    plan.entries()
        .forEach(
            (name, value) -> {
              if (!NAMES.contains(name)) {
                value.fault(
                    "The property ("
                        + Shown.of(name)
                        + ") is not known here."
                        + Nearest.maybe(name, NAMES));
              }
            });
  }

  private Optional<Problem> problem(Cursor plan, JsonDocument document, Faults faults) {
    if (!plan.field("problem").isPresent()) {
      plan.field("problem").fault("The problem is missing: what the session was asked to be.");
      return Optional.empty();
    }
    try {
      return Optional.of(problems.read(document, plan.field("problem").pointer()));
    } catch (InvalidInputException e) {
      List<Violation> violations = e.violations();
      faults.settle(violations);
      return Optional.empty();
    }
  }

  private List<PlannedSuperset> supersets(Cursor list, int positions) {
    if (!list.isPresent()) {
      list.fault("The supersets are missing.");
    }
    List<PlannedSuperset> supersets = new ArrayList<>();
    for (Cursor superset : list.elements()) {
      int expected = supersets.size() + 1;
      int number = superset.field("number").integer().orElse(expected);
      if (number != expected) {
        superset
            .field("number")
            .fault("The number (" + number + ") must be " + expected + ": they count from 1.");
      }
      supersets.add(new PlannedSuperset(expected, exercises(superset, positions)));
    }
    return supersets;
  }

  private List<String> exercises(Cursor superset, int positions) {
    Set<String> known = catalogue.exercises().keySet();
    Cursor list = superset.field("exercises");
    if (!list.isPresent()) {
      list.fault("The exercises of the superset are missing.");
    }
    List<String> ids =
        list.elements().stream().flatMap(name -> exercise(name, known).stream()).toList();
    if (ids.size() > positions) {
      list.fault(
          "The superset has more exercises ("
              + ids.size()
              + ") than positions ("
              + positions
              + ").");
    }
    boolean bothSides = ids.size() == 1 && unilateral(ids.get(0));
    return bothSides ? Collections.nCopies(positions, ids.get(0)) : ids;
  }

  private Optional<String> exercise(Cursor name, Set<String> known) {
    Optional<String> id = name.id("exercise", known);
    id.map(catalogue.exercises()::get)
        .filter(exercise -> exercise.part() != Part.MAIN)
        .ifPresent(
            exercise ->
                name.fault(
                    "The exercise ("
                        + exercise.id()
                        + ") is for the "
                        + exercise.part().id()
                        + "; only main exercises stand in supersets."));
    return id;
  }

  private boolean unilateral(String id) {
    Exercise exercise = catalogue.exercises().get(id);
    return exercise.isUnilateral();
  }
}
