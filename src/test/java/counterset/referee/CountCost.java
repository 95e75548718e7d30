package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.function.LongUnaryOperator;

/** What a number costs, whatever the shape of the cost: one literal for each value. */
final class CountCost {

  private CountCost() {}

  /**
   * The cost of a number.
   *
   * @param count from 0 to {@code most}
   */
  static LinearExpr of(CpModel model, LinearArgument count, int most, LongUnaryOperator cost) {
    Literal[] is = new Literal[most + 1];
    LinearExprBuilder number = LinearExpr.newBuilder();
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int value = 0; value <= most; value++) {
      BoolVar literal = model.newBoolVar("");
      is[value] = literal;
      number.addTerm(literal, value);
      sum.addTerm(literal, cost.applyAsLong(value));
    }
    model.addExactlyOne(is);
    model.addEquality(number.build(), count);
    return sum.build();
  }
}
