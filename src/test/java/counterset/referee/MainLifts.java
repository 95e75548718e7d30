package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.MainLiftMissing;
import java.util.ArrayList;
import java.util.List;

/**
 * The four kinds of heavy work: a squat, lunge or step; a hinge or bridge; a push for the chest; a
 * pull for the back.
 */
record MainLifts(CpModel model, Problem problem, Objective objective) {

  private static final List<Kind> KINDS =
      List.of(
          new Kind(List.of("squat", "lunge", "step"), List.of("quadriceps")),
          new Kind(List.of("hinge", "bridge"), List.of("hamstrings", "gluteus-maximus")),
          new Kind(List.of("push"), List.of("chest")),
          new Kind(List.of("pull"), List.of("lats", "upper-back")));

  private record Kind(List<String> patterns, List<String> muscles) {}

  /**
   * Charges those that are not there and could be.
   *
   * @param possible every exercise that the client could do
   */
  void charge(List<Exercise> possible, Work work) {
    for (Kind kind : KINDS) {
      if (possible.stream().anyMatch(exercise -> isOf(kind, exercise))) {
        LinearExprBuilder lacking = LinearExpr.newBuilder();
        lacking.addTerm(work.count(exercise -> isOf(kind, exercise)), -1);
        lacking.add(1);
        objective.charge(MainLiftMissing.class, Objective.atLeast(model, lacking.build(), 1));
      }
    }
  }

  private boolean isOf(Kind kind, Exercise exercise) {
    List<String> trained = new ArrayList<>(kind.muscles());
    trained.retainAll(problem.targets().stream().map(Target::muscle).toList());
    trained.retainAll(exercise.primary());
    return kind.patterns().contains(exercise.pattern())
        && !trained.isEmpty()
        && exercise.intensity() != 1;
  }
}
