package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Part;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** All that narrows the choice of main exercises in a problem, each wish apart from the others. */
final class Wishes {

  private final Problem problem;
  private final Catalogue catalogue;
  private final Names names;
  private final List<Wish> wishes = new ArrayList<>();

  Wishes(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.names = new Names(catalogue);
    for (String id : problem.limitations()) {
      wishes.add(
          new Wish(
              names.limitation(id), exercise -> !catalogue.limitations().get(id).allows(exercise)));
    }
    wishes.add(new Wish(equipment(), e -> !e.needs().stream().allMatch(this::isServed)));
    wishes.add(new Wish("level " + problem.level(), e -> e.level() > problem.level()));
    for (String id : problem.exclude()) {
      wishes.add(new Wish(names.named(id) + " excluded", e -> Problem.names(Set.of(id), e)));
    }
    if (problem.clock().perSuperset() != 2) {
      wishes.add(
          new Wish(
              Names.count(problem.clock().perSuperset(), "exercise") + " a superset",
              Exercise::isUnilateral));
    }
  }

  /** Whether none of the wishes rules it out. */
  boolean allow(Exercise exercise) {
    return wishes.stream().noneMatch(wish -> wish.blocks().test(exercise));
  }

  /** The main exercises of the catalogue that no wish rules out, whatever they train. */
  List<Exercise> allowed() {
    return catalogue.exercises(Part.MAIN).stream().filter(this::allow).toList();
  }

  /**
   * What rules out all of some exercises, as smallest sets of wishes that have no wish in common:
   * each set does so alone, and would not without any one of its wishes. Limitations are named
   * first.
   *
   * @param exercises each of them ruled out by at least one wish
   */
  List<String> conflicts(Collection<Exercise> exercises) {
    List<String> conflicts = new ArrayList<>();
    List<Wish> left = new ArrayList<>(wishes);
    while (block(left, exercises)) {
      List<Wish> needed = new ArrayList<>(left);
      for (int i = left.size() - 1; i >= 0; i--) {
        needed.remove(left.get(i));
        if (!block(needed, exercises)) {
          needed.add(left.get(i));
        }
      }
      conflicts.add(Names.list(wishes.stream().filter(needed::contains).map(Wish::words).toList()));
      left.removeAll(needed);
    }
    return conflicts;
  }

  private static boolean block(List<Wish> wishes, Collection<Exercise> exercises) {
    return exercises.stream().allMatch(e -> wishes.stream().anyMatch(w -> w.blocks().test(e)));
  }

  private boolean isServed(Need need) {
    return catalogue.equipment().get(need.equipment()).alwaysThere()
        || problem.equipment().stream().anyMatch(owned -> owned.serves(need));
  }

  private String equipment() {
    List<String> items =
        problem.equipment().stream()
            .map(o -> o.count() == 1 ? names.one(o.id()) : names.many(o.id()))
            .distinct()
            .toList();
    return items.isEmpty() ? "no equipment" : "no equipment but " + Names.list(items);
  }

  /** Whether owned equipment is put to use by an exercise, for lifting or for comfort. */
  static boolean uses(Exercise exercise, Owned owned, Catalogue catalogue) {
    return exercise.needs().stream().anyMatch(need -> need.equipment().equals(owned.id()))
        || catalogue.equipment().get(owned.id()).comfortIn().contains(exercise.position());
  }
}
