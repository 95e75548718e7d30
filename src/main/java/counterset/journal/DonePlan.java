package counterset.journal;

import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Met;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** What a plan amounts to once it has been done as planned. */
public final class DonePlan {

  private final Plan plan;
  private final int rounds;

  public DonePlan(Plan plan) {
    this.plan = plan;
    this.rounds = plan.problem().clock().rounds();
  }

  /** Its length in whole minutes, at least 1. */
  public int minutes() {
    return Math.max(1, (plan.totals().seconds() + 30) / 60);
  }

  /** The main exercises in the order of their first set. */
  public List<ExerciseSets> exercises() {
    Map<String, Integer> sets = new LinkedHashMap<>();
    plan.session().work().forEach(exercise -> sets.merge(exercise.id(), rounds, Integer::sum));
    return sets.entrySet().stream()
        .map(entry -> new ExerciseSets(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** Every muscle group that it trains, in the order of their first set, primary ones before. */
  public List<MuscleSets> muscles() {
    Map<String, Integer> direct = count(Exercise::primary);
    Map<String, Integer> indirect = count(Exercise::secondary);
    Set<String> all = new LinkedHashSet<>(direct.keySet());
    all.addAll(indirect.keySet());
    return all.stream()
        .map(id -> new MuscleSets(id, direct.getOrDefault(id, 0), indirect.getOrDefault(id, 0)))
        .toList();
  }

  private Map<String, Integer> count(Function<Exercise, Set<String>> muscles) {
    Map<String, Integer> sets = new LinkedHashMap<>();
    plan.session()
        .work()
        .forEach(
            exercise ->
                muscles.apply(exercise).forEach(id -> sets.merge(id, rounds, Integer::sum)));
    return sets;
  }

  /**
   * Its energy cost by part. The Compendium's values are for a whole activity with its usual rests,
   * so the rests of the supersets cost what their exercises cost on average. Getting ready, and
   * time without an exercise, is left out.
   *
   * @param minutes how long the session took; the parts are stretched or shortened alike
   */
  public List<EnergyBlock> energy(int minutes) {
    List<EnergyBlock> blocks = new ArrayList<>();
    double stretch = minutes == minutes() ? 1 : 60.0 * minutes / plan.totals().seconds();
    Set<IntervalKind> rests = EnumSet.of(IntervalKind.SWITCH, IntervalKind.REST);
    block("warm-up", IntervalKind.WARM_UP, Set.of(), stretch).ifPresent(blocks::add);
    block("supersets", IntervalKind.WORK, rests, stretch).ifPresent(blocks::add);
    block("cool-down", IntervalKind.COOL_DOWN, Set.of(), stretch).ifPresent(blocks::add);
    return blocks;
  }

  private Optional<EnergyBlock> block(
      String part, IntervalKind kind, Set<IntervalKind> rests, double stretch) {
    Set<String> codes = new TreeSet<>();
    double metSeconds = 0;
    int moving = 0;
    int resting = 0;
    for (Interval interval : plan.timeline()) {
      Optional<Met> met = interval.exercise().map(Exercise::met);
      if (interval.kind() == kind && met.isPresent()) {
        moving += interval.seconds();
        metSeconds += met.get().value() * interval.seconds();
        codes.add(met.get().code() + " (" + met.get().edition() + ")");
      } else if (rests.contains(interval.kind())) {
        resting += interval.seconds();
      }
    }
    if (moving == 0) {
      return Optional.empty();
    }
    double met = Math.round(100 * metSeconds / moving) / 100.0;
    int seconds = Math.toIntExact(Math.round((moving + resting) * stretch));
    return Optional.of(new EnergyBlock(part, seconds, met, List.copyOf(codes)));
  }
}
