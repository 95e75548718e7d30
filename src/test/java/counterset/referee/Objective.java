package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.Level;

/** The points of a session as two sums, medium and soft; both are to be as large as possible. */
final class Objective {

  private final Weights weights;
  private final LinearExprBuilder medium = LinearExpr.newBuilder();
  private final LinearExprBuilder soft = LinearExpr.newBuilder();

  Objective(Weights weights) {
    this.weights = weights;
  }

  /** Charges each unit of an amount that the model may make as small as its constraints allow. */
  void charge(Class<? extends Constraint> constraint, LinearArgument units) {
    Level level = Constraints.the(constraint).level();
    LinearExprBuilder sum = level == Level.MEDIUM ? medium : soft;
    sum.addTerm(units, -weights.of(constraint));
  }

  /** Adds soft points. */
  void earn(LinearArgument literal, long points) {
    soft.addTerm(literal, points);
  }

  LinearExpr medium() {
    return medium.build();
  }

  LinearExpr soft() {
    return soft.build();
  }

  /** A number that is at least 0 and at least as large as what is added to it later. */
  static LinearArgument atLeast(CpModel model, LinearArgument amount, long most) {
    var units = model.newIntVar(0, Math.max(0, most), "");
    model.addGreaterOrEqual(units, amount);
    return units;
  }
}
