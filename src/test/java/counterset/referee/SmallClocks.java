package counterset.referee;

import static counterset.referee.SmallProblems.arms;
import static counterset.referee.SmallProblems.clock;
import static counterset.referee.SmallProblems.core;
import static counterset.referee.SmallProblems.legs;
import static counterset.referee.SmallProblems.many;
import static counterset.referee.SmallProblems.whole;

import counterset.model.Pairing;
import counterset.model.Target;
import java.util.List;

/** Small problems on other clocks: straight sets, tri-sets, rounds, long and short pauses. */
final class SmallClocks {

  private SmallClocks() {}

  static List<SmallProblem> problems() {
    return new SmallProblems()
        .add("one superset", 18, legs(5, "dumbbell"))
        .add("no room for any superset", 12, legs(4))
        .add("straight sets", 16, legs(6, "dumbbell").clock(clock(40, 0, 30, 1, 1)))
        .add("straight sets, two rounds", 16, arms(8, "long-band").clock(clock(40, 0, 40, 1, 2)))
        .add("straight sets, many patterns", 16, many(10, "dumbbell").clock(clock(40, 0, 30, 1, 1)))
        .add("tri-sets", 12, core(9, "mat").clock(clock(40, 10, 45, 3, 1)))
        .add(
            "tri-sets, compound",
            12,
            legs(9, "dumbbell").clock(clock(40, 15, 60, 3, 1)).pairing(Pairing.COMPOUND))
        .add("two rounds", 16, legs(12, "dumbbell").clock(clock(40, 0, 30, 2, 2)))
        .add(
            "two rounds, worn",
            16,
            legs(12, "ankle-weights", "loop-band").clock(clock(40, 15, 45, 2, 2)))
        .add("time to change", 16, whole(9, "dumbbell", "chair").clock(clock(45, 15, 45, 2, 1)))
        .add("hardly a rest", 16, legs(7, "dumbbell", "mat").clock(clock(45, 0, 8, 2, 1)))
        .add(
            "two sets of each target",
            14,
            legs(11, "dumbbell")
                .targets(
                    new Target("quadriceps", 2, 2),
                    new Target("hamstrings", 1, 2),
                    new Target("calves", 1, 2)))
        .list();
  }
}
