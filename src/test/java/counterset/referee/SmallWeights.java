package counterset.referee;

import static counterset.referee.SmallProblems.arms;
import static counterset.referee.SmallProblems.legs;
import static counterset.referee.SmallProblems.whole;

import java.util.List;
import java.util.Map;

/** Small problems in which other things matter than usual. */
final class SmallWeights {

  private SmallWeights() {}

  static List<SmallProblem> problems() {
    return new SmallProblems()
        .add(
            "handling costs nothing",
            14,
            legs(9, "dumbbell", "ankle-weights")
                .weighing(Map.of("equipmentChange", 0, "changeoverSeconds", 0)))
        .add(
            "handling costs much",
            16,
            legs(11, "dumbbell", "loop-band")
                .weighing(Map.of("equipmentChange", 30, "floorTrip", 40)))
        .add(
            "even volume above all",
            14,
            arms(9, "dumbbell").weighing(Map.of("unevenVolume", 12, "pairWorth", 0)))
        .add(
            "heavy first above all",
            14,
            whole(9, "dumbbell").weighing(Map.of("lightBeforeHeavy", 15, "easyWork", 30)))
        .add(
            "coverage counts little",
            14,
            whole(7, "dumbbell", "loop-band")
                .weighing(Map.of("targetUncovered", 0, "supersetEmpty", 3, "equipmentUnused", 5)))
        .list();
  }
}
