package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.score.ExerciseFilter;
import java.util.List;
import java.util.Set;

/**
 * How many exercises for the targets a problem leaves, and how many more there would be without one
 * of its narrow places.
 *
 * @param left those that may be used
 * @param byEquipment more with all equipment of the catalogue
 * @param byLevel more at the highest level
 * @param byExclusion more without anything excluded
 */
public record Narrowing(int left, int byEquipment, int byLevel, int byExclusion) {

  private static final int HIGHEST_LEVEL = 3;
  private static final int PLENTY = 20;

  /** Counts for one problem. */
  public static Narrowing of(Problem problem, Catalogue catalogue) {
    int left = count(problem, catalogue);
    ProblemDraft equipped = new ProblemDraft(problem);
    equipped.equipment.clear();
    catalogue
        .equipment()
        .values()
        .forEach(
            item ->
                equipped.equipment.add(
                    new Owned(item.id(), PLENTY, List.of(), Set.of(Load.values()))));
    ProblemDraft skilled = new ProblemDraft(problem);
    skilled.level = HIGHEST_LEVEL;
    ProblemDraft open = new ProblemDraft(problem);
    open.exclude.clear();
    return new Narrowing(
        left,
        count(equipped.problem(), catalogue) - left,
        count(skilled.problem(), catalogue) - left,
        count(open.problem(), catalogue) - left);
  }

  private static int count(Problem problem, Catalogue catalogue) {
    return new ExerciseFilter(problem, catalogue).main().size();
  }
}
