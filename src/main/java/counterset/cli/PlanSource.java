package counterset.cli;

import counterset.intake.GivenPlan;
import counterset.intake.Readers;
import counterset.json.BadRequest;
import counterset.json.Shown;
import counterset.json.Violation;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.problem.PlanFile;
import counterset.review.Places;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plan file as a command begins with it: what its supersets work out to. */
record PlanSource(GivenPlan given, Catalogue catalogue) {

  private static final int SHOWN = 3;

  /** Reads a plan file. */
  static PlanSource read(Shell shell, String file, Catalogue catalogue) {
    PlanFile read = Readers.plans(catalogue).read(shell.path(file));
    return new PlanSource(GivenPlan.of(read, catalogue, Version.current()), catalogue);
  }

  Plan plan() {
    return given.plan();
  }

  /**
   * The plan, which may have to give up keeping what stands at a place.
   *
   * @throws BadRequest if it keeps that and is not to give it up
   */
  Plan released(At at, boolean release) {
    Optional<Keep> kept = Places.keeping(plan(), at);
    if (kept.isEmpty()) {
      return plan();
    }
    if (!release) {
      String name = Places.standing(plan(), at).map(Exercise::name).orElseThrow();
      throw new BadRequest(
          "--at ("
              + at
              + "): "
              + name
              + " is kept there, as the plan's problem asks. Maybe add --release, which keeps it no"
              + " more.");
    }
    List<Keep> others = new ArrayList<>(plan().problem().keep());
    others.remove(kept.get());
    return new SessionPlanner(catalogue, Version.current())
        .score(plan().problem().keeping(others), plan().session(), plan().solver());
  }

  /** Says what the file says otherwise: figures that somebody left behind are worked out anew. */
  void tell(Shell shell, String name) {
    List<Violation> differences = given.differences();
    if (differences.isEmpty()) {
      return;
    }
    shell.say("The file says something else than its session works out to; the supersets count:");
    differences.stream().limit(SHOWN).forEach(it -> shell.say("  " + it));
    int more = differences.size() - SHOWN;
    if (more > 0) {
      shell.say("  " + more + " more: counterset check " + name + " tells them all.");
    }
    given
        .file()
        .solver()
        .map(SolverNote::version)
        .filter(version -> !version.equals(Version.current()))
        .ifPresent(
            version ->
                shell.say("  It was written by version " + Shown.of(version) + " of Counterset."));
  }
}
