package counterset.report;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Keep;
import counterset.model.Pairing;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.SolverNote;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Random sessions over a fixed catalogue, most of them bad: whatever somebody may write by hand.
 */
public final class RandomPlans {

  /** Many tests look at the same ones. */
  private static final Map<Long, Plan> PLANS = new ConcurrentHashMap<>();

  private RandomPlans() {}

  /** The same seed gives the same plan. */
  public static Plan of(long seed) {
    return PLANS.computeIfAbsent(seed, RandomPlans::made);
  }

  private static Plan made(long seed) {
    Random random = new Random(seed);
    int size = 1 + random.nextInt(3);
    Intervals clock =
        new Intervals(
            random.nextInt(2) * 10,
            random.nextInt(2) * 60,
            30,
            random.nextInt(2) * 8,
            random.nextInt(3) * 15,
            random.nextInt(2) * 60,
            size,
            1 + random.nextInt(2));
    List<Exercise> all = Plans.CATALOGUE.exercises(Part.MAIN);
    String[] supersets = new String[random.nextInt(5)];
    for (int i = 0; i < supersets.length; i++) {
      List<String> ids = new ArrayList<>();
      for (int position = random.nextInt(4) == 0 ? 1 : 0; position < size; position++) {
        Exercise exercise = all.get(random.nextInt(all.size()));
        ids.add(exercise.id());
        if (exercise.isUnilateral() && size == 2) {
          ids.add(exercise.id());
          break;
        }
      }
      supersets[i] = String.join(" ", ids.subList(0, Math.min(size, ids.size())));
    }
    return Plans.score(
        problem(random, clock, all),
        new SolverNote(seed, "none", "test", 0, true),
        clock.warmUp() > 0 && random.nextBoolean()
            ? Plans.moves("warm-march", "warm-air-row")
            : List.of(),
        clock.coolDown() > 0 && random.nextBoolean()
            ? Plans.moves("standing-thigh-stretch")
            : List.of(),
        supersets);
  }

  private static Problem problem(Random random, Intervals clock, List<Exercise> all) {
    String some = all.get(random.nextInt(all.size())).id();
    return Problem.builder()
        .title("Random " + random.nextInt(100))
        .minutes(3 + random.nextInt(12))
        .clock(clock)
        .targets(List.of(new Target("quadriceps", 1, 1), new Target("chest", 2, 3)))
        .equipment(
            List.of(
                Plans.owned("dumbbell", 2, 5.0, 7.5, 12.0),
                Plans.owned("chair", 1),
                Plans.owned("loop-band", 1)))
        .limitations(random.nextBoolean() ? Set.of() : Set.of("sore-knees", "no-floor"))
        .level(1 + random.nextInt(3))
        .pairing(Pairing.values()[random.nextInt(3)])
        .include(Set.of(some))
        .exclude(Set.of("squat"))
        .keep(List.of(new Keep(new At(2, 0), some)))
        .likes(Set.of("hinge"))
        .dislikes(Set.of("lunge"))
        .build();
  }
}
