package counterset.referee;

import static counterset.referee.SmallProblems.arms;
import static counterset.referee.SmallProblems.core;
import static counterset.referee.SmallProblems.legs;
import static counterset.referee.SmallProblems.many;
import static counterset.referee.SmallProblems.whole;

import counterset.model.Pairing;
import counterset.model.Target;
import java.util.List;

/** Small problems that differ in what is trained, by whom and with what. */
final class SmallBodies {

  private SmallBodies() {}

  static List<SmallProblem> problems() {
    return new SmallProblems()
        .add("legs, nothing but the body", 16, legs(9))
        .add("legs, dumbbells", 16, legs(11, "dumbbell"))
        .add("legs, ankle weights", 16, legs(11, "ankle-weights"))
        .add("legs, loop band", 14, legs(9, "loop-band"))
        .add("legs, ankle weights and loop band", 16, legs(9, "ankle-weights", "loop-band"))
        .add("legs, dumbbells and mat", 16, legs(9, "dumbbell", "mat"))
        .add("arms, dumbbells", 16, arms(9, "dumbbell"))
        .add("arms, long band", 14, arms(9, "long-band"))
        .add("arms, kettlebell and chair", 14, arms(7, "kettlebell", "chair"))
        .add("core, mat", 18, core(9, "mat"))
        .add("core, nothing but the body", 18, core(11))
        .add("whole body, dumbbells and mat", 16, whole(11, "dumbbell", "mat"))
        .add("sore knees", 16, legs(9, "dumbbell", "ankle-weights").limited("sore-knees"))
        .add("no floor", 14, whole(9, "dumbbell").limited("no-floor"))
        .add(
            "sore shoulders and wrists",
            14,
            arms(9, "dumbbell").limited("sore-shoulders", "sore-wrists"))
        .add("expecting", 14, whole(9, "chair").limited("pregnancy"))
        .add("sore back, core", 14, core(7, "mat").limited("sore-lower-back"))
        .add("beginner", 14, legs(9, "dumbbell").level(1))
        .add("skilled", 16, arms(9, "dumbbell", "pull-up-bar").level(3))
        .add("compound legs", 16, legs(9, "dumbbell").pairing(Pairing.COMPOUND))
        .add("compound arms", 14, arms(9, "long-band").pairing(Pairing.COMPOUND))
        .add("free whole body", 16, whole(9, "dumbbell").pairing(Pairing.FREE))
        .add("many patterns, dumbbells", 20, many(11, "dumbbell"))
        .add("many patterns, compound", 20, many(11, "dumbbell").pairing(Pairing.COMPOUND))
        .add("many patterns, long band and mat", 20, many(11, "long-band", "mat"))
        .add(
            "emphasis on glutes",
            16,
            legs(11, "loop-band", "mat")
                .targets(
                    new Target("gluteus-maximus", 3, 2),
                    new Target("hip-abductors", 2, 1),
                    new Target("hamstrings", 1, 1)))
        .list();
  }
}
