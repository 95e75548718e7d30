package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * All sensible single changes of a problem, those that cost the coach least first: the clock,
 * equipment, exercises asked for or refused, sets, the level, targets, and last of all what the
 * client's body does not allow.
 */
final class Changes {

  private static final int HIGHEST_LEVEL = 3;

  private final Problem problem;
  private final Names names;
  private final List<Change> changes = new ArrayList<>();

  private Changes(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.names = new Names(catalogue);
  }

  /** The changes of a problem, of which a plan is not good enough. */
  static List<Change> of(Problem problem, Plan plan, Catalogue catalogue) {
    Changes all = new Changes(problem, catalogue);
    all.changes.addAll(ClockChanges.of(problem, plan));
    all.changes.addAll(EquipmentChanges.more(problem, catalogue));
    all.changes.addAll(EquipmentChanges.less(problem, catalogue));
    all.wishes();
    problem.targets().forEach(all::fewerSets);
    if (problem.level() < HIGHEST_LEVEL) {
      all.add("level", "level " + (problem.level() + 1), draft -> draft.level++);
    }
    all.targets(plan);
    all.changes.addAll(LimitationChanges.of(problem, catalogue));
    return all.changes;
  }

  private void wishes() {
    for (Keep keep : problem.keep()) {
      String phrase =
          "let go of what is kept at " + keep.at() + " (" + names.named(keep.exercise()) + ")";
      add("keep " + keep.at(), phrase, draft -> draft.keep.remove(keep));
    }
    for (String id : problem.include()) {
      add("include " + id, "do without " + names.named(id), draft -> draft.include.remove(id));
    }
    for (String id : problem.exclude()) {
      add("exclude " + id, "stop excluding " + names.named(id), draft -> draft.exclude.remove(id));
    }
    for (Set<String> track : problem.tracks()) {
      String words = Names.list(track.stream().map(names::limitation).toList());
      add("track " + words, "no track for " + words, draft -> draft.tracks.remove(track));
    }
  }

  private void fewerSets(Target target) {
    for (int sets = target.minSets() - 1; sets >= 1; sets--) {
      Target less = new Target(target.muscle(), target.emphasis(), sets);
      add(
          "target " + target.muscle(),
          "ask for fewer sets of "
              + names.muscle(target.muscle())
              + " ("
              + sets
              + " instead of "
              + target.minSets()
              + ")",
          draft -> draft.targets.replaceAll(t -> t.equals(target) ? less : t));
    }
  }

  /** Those that a plan does not cover come first. */
  private void targets(Plan plan) {
    if (problem.targets().size() == 1) {
      return;
    }
    Set<Target> inOrder = new LinkedHashSet<>();
    for (int i = 0; i < plan.coverage().size() && i < problem.targets().size(); i++) {
      if (!plan.coverage().get(i).isCovered()) {
        inOrder.add(problem.targets().get(i));
      }
    }
    inOrder.addAll(problem.targets());
    for (Target target : inOrder) {
      String muscle = target.muscle();
      add(
          "target " + muscle,
          "drop " + names.muscle(muscle),
          draft ->
              draft.targets.removeIf(t -> t.muscle().equals(muscle) && draft.targets.size() > 1));
    }
  }

  private void add(String topic, String phrase, Consumer<ProblemDraft> edit) {
    changes.add(new Change(topic, phrase, edit));
  }
}
