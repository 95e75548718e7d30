package counterset.ask;

import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A problem while values are put into it. */
final class VariedProblem {

  private final Problem original;
  final Map<ClockPart, Integer> seconds = new EnumMap<>(ClockPart.class);
  int minutes;
  int perSuperset;
  int rounds;
  List<Target> targets;
  List<Owned> equipment;
  Set<String> limitations;
  int level;
  Pairing pairing;
  long seed;

  VariedProblem(Problem original) {
    this.original = original;
    Intervals clock = original.clock();
    seconds.put(ClockPart.GET_READY, clock.getReady());
    seconds.put(ClockPart.WARM_UP, clock.warmUp());
    seconds.put(ClockPart.WORK, clock.work());
    seconds.put(ClockPart.SWITCH, clock.between());
    seconds.put(ClockPart.REST, clock.rest());
    seconds.put(ClockPart.COOL_DOWN, clock.coolDown());
    minutes = original.minutes();
    perSuperset = clock.perSuperset();
    rounds = clock.rounds();
    targets = original.targets();
    equipment = original.equipment();
    limitations = original.limitations();
    level = original.level();
    pairing = original.pairing();
    seed = original.seed();
  }

  Problem problem(String title) {
    return original.toBuilder()
        .title(title)
        .minutes(minutes)
        .clock(clock())
        .targets(targets)
        .equipment(equipment)
        .limitations(limitations)
        .level(level)
        .pairing(pairing)
        .seed(seed)
        .build();
  }

  private Intervals clock() {
    return new Intervals(
        seconds.get(ClockPart.GET_READY),
        seconds.get(ClockPart.WARM_UP),
        seconds.get(ClockPart.WORK),
        seconds.get(ClockPart.SWITCH),
        seconds.get(ClockPart.REST),
        seconds.get(ClockPart.COOL_DOWN),
        perSuperset,
        rounds);
  }
}
