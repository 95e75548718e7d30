package counterset.search;

import counterset.fixture.GivenPlans;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallTrade;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Pairing;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.score.ExerciseFilter;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All sessions of a small problem near a given one, by plain enumeration: whatever can stand in a
 * superset is tried in each, and the whole plan is scored.
 */
final class Nearby {

  static final Catalogue CATALOGUE = Trade.of(SmallTrade.exercises(10));

  private final Plan from;
  private final int most;
  private final Collection<At> chosen;
  private final List<List<Exercise>> contents = new ArrayList<>();
  private final List<Plan> found = new ArrayList<>();

  private Nearby(Plan from, int most, Collection<At> chosen) {
    this.from = from;
    this.most = most;
    this.chosen = chosen;
    // The planner's choice, and what stands in the session anyway.
    Set<Exercise> exercises =
        new LinkedHashSet<>(new ExerciseFilter(from.problem(), CATALOGUE).main());
    from.session().work().forEach(exercises::add);
    contents.add(List.of());
    int longest = 0;
    for (int size = 1; size <= from.problem().clock().perSuperset(); size++) {
      int first = longest;
      longest = contents.size();
      for (int shorter = first; shorter < longest; shorter++) {
        for (Exercise exercise : exercises) {
          List<Exercise> longer = new ArrayList<>(contents.get(shorter));
          longer.add(exercise);
          contents.add(longer);
        }
      }
    }
  }

  /** Room for three supersets of pairs, six straight sets. */
  static Problem problem(int perSuperset, long seed) {
    return Problems.of(CATALOGUE, Region.LOWER)
        .targets(
            Stream.of("quadriceps", "hamstrings", "chest", "gluteus-maximus", "upper-back")
                .map(muscle -> new Target(muscle, 1, 1))
                .toArray(Target[]::new))
        .minutes(9)
        .clock(SessionBuilder.clock(perSuperset, 1))
        .pairing(Pairing.values()[(int) seed % 3])
        .limited(seed % 2 == 0 ? new String[0] : new String[] {"sore-knees"})
        .level(1 + (int) seed % 3)
        .owning(Problems.two(Trade.DUMBBELL), Problems.two(Trade.ANKLE_WEIGHTS))
        .problem();
  }

  static Worth worth(Plan plan) {
    return new Worth(plan.score().hard(), plan.score().medium(), plan.score().soft());
  }

  /**
   * The given plan and all with at most so many changes.
   *
   * @param chosen places that stay as they are
   */
  static List<Plan> all(Plan from, int most, Collection<At> chosen) {
    Nearby nearby = new Nearby(from, most, chosen);
    nearby.from(1, 0, new ArrayList<>());
    return nearby.found;
  }

  private void from(int number, int changes, List<List<Exercise>> sofar) {
    if (number > supersets()) {
      found.add(GivenPlans.of(from.problem(), CATALOGUE, sofar));
      return;
    }
    Superset before = before(number);
    for (List<Exercise> exercises : contents) {
      List<At> changed =
          ChangedPlaces.between(
              before, new Superset(number, exercises), from.problem().clock().perSuperset());
      if (changes + changed.size() <= most && chosen.stream().noneMatch(changed::contains)) {
        sofar.add(exercises);
        from(number + 1, changes + changed.size(), sofar);
        sofar.remove(sofar.size() - 1);
      }
    }
  }

  private int supersets() {
    return SessionLength.supersetsThatFit(from.problem().clock(), from.problem().minutes());
  }

  private Superset before(int number) {
    List<Superset> supersets = from.session().supersets();
    return number <= supersets.size() ? supersets.get(number - 1) : new Superset(number, List.of());
  }
}
