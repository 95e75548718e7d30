package counterset.referee;

import static counterset.referee.SmallProblems.arms;
import static counterset.referee.SmallProblems.clock;
import static counterset.referee.SmallProblems.core;
import static counterset.referee.SmallProblems.legs;
import static counterset.referee.SmallProblems.whole;

import counterset.model.At;
import counterset.model.Keep;
import counterset.model.Pairing;
import counterset.model.Target;
import java.util.List;
import java.util.Map;

/** Problems so tiny that every session can be tried. */
final class TinyProblems {

  private TinyProblems() {}

  static List<SmallProblem> all() {
    return new SmallProblems()
        .add("one superset, eight exercises", 8, legs(5, "dumbbell"))
        .add("two supersets", 7, legs(7, "dumbbell", "mat"))
        .add("three supersets, worn", 5, legs(9, "ankle-weights", "loop-band"))
        .add("compound", 7, arms(7, "dumbbell").pairing(Pairing.COMPOUND))
        .add(
            "free, emphasis",
            7,
            legs(7, "loop-band")
                .pairing(Pairing.FREE)
                .targets(new Target("gluteus-maximus", 3, 2), new Target("hamstrings", 1, 1)))
        .add("straight sets", 6, legs(5, "dumbbell").clock(clock(40, 0, 30, 1, 1)))
        .add("tri-sets", 5, core(6, "mat").clock(clock(40, 15, 60, 3, 1)))
        .add("two rounds, worn", 7, legs(8, "ankle-weights").clock(clock(40, 15, 45, 2, 2)))
        .add(
            "kept in the second position, with an exercise asked for",
            7,
            whole(7, "dumbbell"),
            (plain, allowed) ->
                plain
                    .keeping(
                        new Keep(
                            new At(2, 1),
                            allowed.stream()
                                .filter(e -> !e.isUnilateral())
                                .findFirst()
                                .orElseThrow()
                                .id()))
                    .including(allowed.get(5).id()))
        .add(
            "a place that does not exist is kept",
            6,
            legs(5, "dumbbell"),
            (plain, allowed) -> plain.keeping(new Keep(new At(2, 0), allowed.get(0).id())))
        .add("hardly a rest", 7, legs(6, "dumbbell").clock(clock(45, 0, 8, 2, 1)))
        .add(
            "other weights",
            7,
            whole(7, "mat", "loop-band")
                .weighing(Map.of("unevenVolume", 9, "floorTrip", 50, "equipmentUnused", 0)))
        .list();
  }
}
