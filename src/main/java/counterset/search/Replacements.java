package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.score.ExerciseFilter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What could stand at a place of a plan instead of what stands there, by what each choice makes of
 * the whole session.
 *
 * <p>A one-sided exercise takes both places of its superset. Where one leaves, the other place gets
 * the partner that is best for the session.
 */
public final class Replacements {

  private static final Comparator<Replacement> BEST_FIRST =
      Comparator.comparing(Replacements::worth)
          .reversed()
          .thenComparing(replacement -> replacement.exercise().id());

  private final Catalogue catalogue;
  private final String version;

  /**
   * Replacements from a catalogue.
   *
   * @param version of this program, for the notes in plans
   */
  public Replacements(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * Every exercise that suits the problem and is not in the session yet, nor a variant of it, the
   * best first: by hard, medium and soft points, then by id. Those that break a rule, as by too
   * long a changeover, have fewer hard points than the plan and stand at the end.
   *
   * @param at a place that is filled, or the first of its superset that is empty
   * @throws IllegalArgumentException if the session has no such place
   */
  public List<Replacement> of(Plan plan, At at) {
    Problem problem = plan.problem();
    Vacancy vacancy = new Vacancy(plan.session(), problem.clock().perSuperset(), at);
    List<Exercise> usable = new ExerciseFilter(problem, catalogue).main();
    Filling oneSided = new Filling(problem, catalogue, usable, vacancy, true);
    Filling others = new Filling(problem, catalogue, usable, vacancy, false);
    List<Replacement> replacements = new ArrayList<>();
    for (Exercise exercise : usable) {
      if (!vacancy.isLeaving(exercise)) {
        (vacancy.fillsBoth(exercise) ? oneSided : others)
            .with(exercise)
            .ifPresent(replacements::add);
      }
    }
    replacements.sort(BEST_FIRST);
    return replacements;
  }

  private static Worth worth(Replacement replacement) {
    return new Worth(replacement.hard(), replacement.medium(), replacement.soft());
  }

  /**
   * The whole plan with a replacement. Its warm-up and cool-down are chosen anew, unless somebody
   * changed them by hand.
   *
   * @param from the plan that the replacement was worked out for
   */
  public Plan plan(Plan from, Replacement chosen) {
    Problem problem = from.problem();
    SolverNote note = new SolverNote(problem.seed(), "none", version, 0, true);
    Session session = chosen.session();
    Session whole =
        new Surroundings(problem, catalogue)
            .renewed(from.session(), session.supersets(), session.modifications());
    Plan plan = new SessionPlanner(catalogue, version).score(problem, whole, note);
    return from.bound().map(plan::withBound).orElse(plan);
  }
}
