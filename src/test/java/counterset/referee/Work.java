package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/** Which exercises a session has, wherever they stand; none of them comes in two variants. */
final class Work {

  private final List<Choice> choices;
  private final List<LinearArgument> done = new ArrayList<>();

  Work(CpModel model, List<Choice> choices, List<Layer> layers) {
    this.choices = choices;
    for (Choice choice : choices) {
      LinearExprBuilder sum = LinearExpr.newBuilder();
      for (Layer layer : layers) {
        if (layer.does()[choice.index()] != null) {
          sum.add(layer.does()[choice.index()]);
        }
      }
      BoolVar there = model.newBoolVar("");
      model.addEquality(sum.build(), there);
      done.add(there);
    }
    groups(Exercise::root)
        .values()
        .forEach(variants -> model.addLessOrEqual(sum(variants::contains, choice -> 1), 1));
  }

  /** The choices by what they have in common. */
  Map<String, List<Choice>> groups(Function<Exercise, String> key) {
    Map<String, List<Choice>> groups = new LinkedHashMap<>();
    for (Choice choice : choices) {
      groups.computeIfAbsent(key.apply(choice.exercise()), k -> new ArrayList<>()).add(choice);
    }
    return groups;
  }

  List<Choice> choices() {
    return choices;
  }

  /** Whether an exercise is there, as 0 or 1. */
  LinearArgument done(Choice choice) {
    return done.get(choice.index());
  }

  /** How many exercises of a kind there are. */
  LinearExpr count(Predicate<Exercise> kind) {
    return sum(choice -> kind.test(choice.exercise()), choice -> 1);
  }

  /** A sum over those that are there. */
  LinearExpr sum(Predicate<Choice> which, ToLongFunction<Choice> amount) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (Choice choice : choices) {
      if (which.test(choice)) {
        sum.addTerm(done.get(choice.index()), amount.applyAsLong(choice));
      }
    }
    return sum.build();
  }
}
