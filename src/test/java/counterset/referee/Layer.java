package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * One superset of the model: exactly one of its fillings is chosen, and which exercises that brings
 * is known for each of them.
 *
 * @param does by choice, whether its exercise is in this superset; null where it never is
 */
record Layer(List<Filling> fillings, List<BoolVar> chosen, BoolVar[] does) {

  static Layer of(CpModel model, List<Filling> fillings, int choices) {
    List<BoolVar> chosen = new ArrayList<>();
    Map<Integer, LinearExprBuilder> bring = new HashMap<>();
    for (Filling filling : fillings) {
      BoolVar literal = model.newBoolVar("");
      chosen.add(literal);
      for (Choice choice : filling.occurrences()) {
        bring.computeIfAbsent(choice.index(), i -> LinearExpr.newBuilder()).add(literal);
      }
    }
    model.addExactlyOne(chosen.toArray(new Literal[0]));
    BoolVar[] does = new BoolVar[choices];
    bring.forEach(
        (choice, literals) -> {
          does[choice] = model.newBoolVar("");
          model.addEquality(literals.build(), does[choice]);
        });
    return new Layer(fillings, chosen, does);
  }

  /** The sum of the literals of some fillings: 1 if one of them is chosen. */
  LinearExpr some(Predicate<Filling> which) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int i = 0; i < fillings.size(); i++) {
      if (which.test(fillings.get(i))) {
        sum.add(chosen.get(i));
      }
    }
    return sum.build();
  }

  /** The sums of the literals of fillings that begin alike. */
  Map<Entry, LinearExprBuilder> byEntry() {
    Map<Entry, LinearExprBuilder> sums = new LinkedHashMap<>();
    for (int i = 0; i < fillings.size(); i++) {
      sums.computeIfAbsent(fillings.get(i).entry(), e -> LinearExpr.newBuilder())
          .add(chosen.get(i));
    }
    return sums;
  }

  /** The sums of the literals of fillings that end alike. */
  Map<Exit, LinearExprBuilder> byExit() {
    Map<Exit, LinearExprBuilder> sums = new LinkedHashMap<>();
    for (int i = 0; i < fillings.size(); i++) {
      sums.computeIfAbsent(fillings.get(i).exit(), e -> LinearExpr.newBuilder()).add(chosen.get(i));
    }
    return sums;
  }
}
