package counterset.cli;

import static counterset.cli.GoodPlan.exercises;
import static counterset.cli.GoodPlan.list;
import static counterset.cli.GoodPlan.object;
import static counterset.cli.GoodPlan.put;

import java.util.stream.Stream;

/** Edits of the decisions in a plan, each of which breaks one rule or leaves one wish unmet. */
final class SessionEdits {

  private SessionEdits() {}

  static Stream<PlanEdit> all() {
    return Stream.of(
        PlanEdit.of(
            "an exercise twice",
            Exit.INFEASIBLE,
            plan -> put(plan, "3A", "dumbbell-partial-squat"),
            "1B to 3A: the same exercise twice",
            "Maybe swap one of them."),
        PlanEdit.of(
            "two variants of an exercise",
            Exit.INFEASIBLE,
            plan -> put(plan, "3A", "one-dumbbell-romanian-deadlift"),
            "1A to 3A: the same exercise twice",
            "Maybe swap one of them."),
        PlanEdit.of(
            "sides apart",
            Exit.INFEASIBLE,
            plan -> put(plan, "2B", "partial-squat"),
            "2A",
            "is one-sided, and its superset does not hold left side and right side"),
        PlanEdit.of(
            "unsafe",
            Exit.INFEASIBLE,
            plan -> put(plan, "3A", "goblet-squat"),
            "3A: Goblet squat goes against sore knees (knee demand 2, at most 1",
            "Swap it."),
        PlanEdit.of(
            "without the equipment",
            Exit.INFEASIBLE,
            plan -> put(plan, "3B", "band-deadlift"),
            "3B: ",
            "long band",
            "not among the equipment",
            "list the equipment."),
        PlanEdit.of(
            "too few dumbbells",
            Exit.INFEASIBLE,
            plan -> object(plan, "/problem/equipment/0").put("count", 1),
            "1A: Dumbbell Romanian deadlift needs ",
            "dumbbells",
            "not among the equipment"),
        PlanEdit.of(
            "no heavy dumbbell",
            Exit.INFEASIBLE,
            plan -> list(plan, "/problem/equipment/0/loads").removeAll().add("light").add("medium"),
            "2A",
            "Suitcase deadlift needs ",
            "heavy",
            "not among the equipment"),
        PlanEdit.of(
            "a changeover that does not fit",
            Exit.INFEASIBLE,
            plan -> put(plan, "3B", "ankle-weight-leg-curl-wall"),
            "3A to 3B: ",
            " s too long for the changeover: ",
            " s needed, ",
            " s there",
            "lengthen the pause"),
        PlanEdit.of(
            "a superset too many",
            Exit.INFEASIBLE,
            plan ->
                list(plan, "/supersets")
                    .addObject()
                    .put("number", 9)
                    .putArray("exercises")
                    .add("prone-leg-curl")
                    .add("glute-bridge"),
            "All places filled, the session takes 10 s more than 20 minutes",
            "Maybe drop a superset"),
        PlanEdit.of(
            "a kept exercise elsewhere",
            Exit.INFEASIBLE,
            plan -> {
              put(plan, "1A", "dumbbell-partial-squat");
              put(plan, "1B", "dumbbell-romanian-deadlift");
            },
            "1A: Dumbbell Romanian deadlift is kept at 1A, and Dumbbell partial squat stands there",
            "Maybe put it back"),
        PlanEdit.of(
            "above the level",
            Exit.INFEASIBLE,
            plan -> object(plan, "/problem").put("level", 1),
            "2A",
            "Suitcase deadlift is level 2, above level 1",
            "raise the level"),
        PlanEdit.of(
            "excluded",
            Exit.INFEASIBLE,
            plan -> list(plan, "/problem/exclude").add("clam"),
            "8A",
            "Ankle-weight raised clam is excluded",
            "exclude it no longer"),
        PlanEdit.of(
            "a target without sets",
            Exit.DONE,
            plan -> list(plan, "/problem/targets").addObject().put("muscle", "biceps"),
            "Biceps: 1 set too few",
            "Maybe more minutes"),
        PlanEdit.of(
            "an empty superset",
            Exit.DONE,
            plan -> exercises(plan, 4).removeAll(),
            "Superset 4: not full, although the clock has room for it"),
        PlanEdit.of(
            "half a superset",
            Exit.DONE,
            plan -> exercises(plan, 4).remove(1),
            "Superset 4: not full"),
        PlanEdit.of(
            "a superset too few",
            Exit.DONE,
            plan -> list(plan, "/supersets").remove(7),
            "Superset 8: not full, although the clock has room for it"),
        PlanEdit.of(
            "equipment left lying",
            Exit.DONE,
            plan -> list(plan, "/problem/equipment").addObject().put("id", "kettlebell"),
            "Kettlebell: listed, and no exercise uses it"),
        PlanEdit.of(
            "a wish left out",
            Exit.DONE,
            plan -> list(plan, "/problem/include").add("glute-bridge"),
            "Glute bridge: asked for, and not in the session"));
  }
}
