package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.score.ExerciseFilter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one limitation keeps out of a session.
 *
 * @param exercises those that nothing else speaks against, the ones that the session would gain
 *     most by first
 */
public record KeptOut(Limitation limitation, List<Exercise> exercises) {

  public KeptOut {
    exercises = List.copyOf(exercises);
  }

  /** By limitation of the whole session, in the order of the problem. */
  public static List<KeptOut> of(Plan plan, Catalogue catalogue, String version) {
    List<KeptOut> all = new ArrayList<>();
    for (String id : plan.problem().limitations()) {
      all.add(of(plan, catalogue.limitations().get(id), catalogue, version));
    }
    return all;
  }

  private static KeptOut of(Plan plan, Limitation limitation, Catalogue catalogue, String version) {
    ProblemDraft draft = new ProblemDraft(plan.problem());
    draft.limitations.remove(limitation.id());
    Problem without = draft.problem();
    Set<Exercise> out = new LinkedHashSet<>(new ExerciseFilter(without, catalogue).main());
    out.removeAll(new ExerciseFilter(plan.problem(), catalogue).main());
    Map<Exercise, Worth> worths = worths(plan, without, catalogue, version);
    List<Exercise> sorted = new ArrayList<>(out);
    // Those that fit nowhere come last; the sort is stable.
    Worth nothing = new Worth(Integer.MIN_VALUE, 0, 0);
    sorted.sort(Comparator.comparing((Exercise e) -> worths.getOrDefault(e, nothing)).reversed());
    return new KeptOut(limitation, sorted);
  }

  /** The best that the session could become with each exercise, at any place. */
  private static Map<Exercise, Worth> worths(
      Plan plan, Problem without, Catalogue catalogue, String version) {
    SolverNote note = new SolverNote(without.seed(), "none", version, 0, true);
    Plan relaxed = new SessionPlanner(catalogue, version).score(without, plan.session(), note);
    Replacements replacements = new Replacements(catalogue, version);
    Map<Exercise, Worth> worths = new HashMap<>();
    for (Superset superset : relaxed.session().supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        for (Replacement other : replacements.of(relaxed, new At(superset.number(), position))) {
          Worth worth = new Worth(other.hard(), other.medium(), other.soft());
          worths.merge(other.exercise(), worth, (a, b) -> a.compareTo(b) >= 0 ? a : b);
        }
      }
    }
    return worths;
  }
}
