package counterset.bound;

import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Keep;
import counterset.model.Owned;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.ExerciseFilter;
import counterset.score.PlanConstraint;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A random problem over a few exercises of a catalogue, and the best of all its sessions.
 *
 * @param best by medium score, the best soft score of the sessions that break no rule
 */
record TinyProblem(SessionFacts facts, Map<Integer, Integer> best) {

  private static final int[] MOST_EXERCISES = {0, 9, 7, 5};

  /** The problem of a seed. */
  static TinyProblem of(Catalogue catalogue, long seed) {
    return of(catalogue, seed, false, TinyProblem::weights);
  }

  /** One in which the floor comes last and the order of work weighs much. */
  static TinyProblem floorLast(Catalogue catalogue, long seed) {
    return of(catalogue, seed, false, random -> Map.of("lightBeforeHeavy", 40, "floorEarly", 800));
  }

  /** One of which every target must get a set. */
  static TinyProblem wishing(Catalogue catalogue, long seed) {
    return of(catalogue, seed, true, TinyProblem::weights);
  }

  private static TinyProblem of(
      Catalogue catalogue,
      long seed,
      boolean wishing,
      Function<Random, Map<String, Integer>> weights) {
    Random random = new Random(seed);
    Problems all = new RandomSessions(catalogue, seed).problem();
    Problem drawn = all.problem();
    Intervals clock = drawn.clock();
    int perSuperset = clock.perSuperset();
    int supersets = perSuperset == 1 ? 2 + random.nextInt(3) : 1 + random.nextInt(2);
    Problems problems =
        all.targets(targets(drawn, random, wishing)).weighing(weights.apply(random));
    if (random.nextInt(3) > 0) {
      problems = problems.keeping();
    }
    if (random.nextInt(3) > 0) {
      problems = problems.including();
    }
    if (random.nextBoolean()) {
      problems =
          problems.owning(
              drawn.equipment().stream().limit(random.nextInt(2)).toArray(Owned[]::new));
    }
    Problem problem = problems.minutes(60).problem();
    Set<Exercise> exercises = new LinkedHashSet<>();
    for (Keep keep : problem.keep()) {
      exercises.add(catalogue.exercises().get(keep.exercise()));
    }
    List<Exercise> pool =
        random.nextInt(4) == 0
            ? catalogue.exercises(Part.MAIN)
            : new ExerciseFilter(problem, catalogue).main();
    int most = MOST_EXERCISES[perSuperset] - (supersets > 3 ? 2 : 0);
    for (int i = 0; i < 3 * most && exercises.size() < most && !pool.isEmpty(); i++) {
      exercises.add(pool.get(random.nextInt(pool.size())));
    }
    SessionFacts facts = new SessionFacts(problem, catalogue, exercises, supersets);
    return new TinyProblem(facts, new Enumeration(facts).best());
  }

  private static Target[] targets(Problem problem, Random random, boolean wishing) {
    return problem.targets().stream()
        .limit(wishing ? 3 : Integer.MAX_VALUE)
        .map(
            target ->
                new Target(
                    target.muscle(),
                    1 + random.nextInt(3),
                    random.nextInt(10) == 0 || wishing ? 1 : 0))
        .toArray(Target[]::new);
  }

  /** Often the defaults; else some others, 0 and large ones among them. */
  private static Map<String, Integer> weights(Random random) {
    Map<String, Integer> weights = new LinkedHashMap<>();
    int changed = random.nextInt(3) == 0 ? 0 : random.nextInt(8);
    for (int i = 0; i < changed; i++) {
      List<PlanConstraint> all = Constraints.OF_SESSIONS;
      int dice = random.nextInt(6);
      int weight = dice == 0 ? 0 : dice == 1 ? 500 + random.nextInt(2000) : random.nextInt(30);
      weights.put(all.get(random.nextInt(all.size())).id(), weight);
    }
    return weights;
  }

  /** Every way to fill the places, with holes. */
  private static final class Enumeration {

    private final SessionFacts facts;
    private final SessionScore score;
    private final List<Candidate> choices;
    private final Candidate[] places;
    private final Map<Integer, Integer> best = new TreeMap<>();

    Enumeration(SessionFacts facts) {
      this.facts = facts;
      score = new SessionScore(facts);
      choices = new ArrayList<>(facts.candidates());
      choices.add(null);
      places = new Candidate[facts.supersets() * facts.perSuperset()];
    }

    Map<Integer, Integer> best() {
      if (facts.overrunSeconds() == 0) {
        fill(0);
      }
      return best;
    }

    private void fill(int place) {
      if (place == places.length) {
        score.compute(places);
        if (score.hard() == 0) {
          best.merge(score.medium(), score.soft(), Math::max);
        }
        return;
      }
      for (Candidate choice : choices) {
        places[place] = choice;
        fill(place + 1);
      }
    }
  }
}
