package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.UnevenVolume;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What each target gets: its sets against its share of all sets. */
final class Volume {

  private final CpModel model;
  private final Problem problem;
  private final Objective objective;
  private final Work work;
  private final int most;

  /**
   * The volume of a session.
   *
   * @param most exercises that it can have
   */
  Volume(CpModel model, Problem problem, Objective objective, Work work, int most) {
    this.model = model;
    this.problem = problem;
    this.objective = objective;
    this.work = work;
    this.most = most;
  }

  void charge() {
    problem.targets().forEach(this::chargeDistance);
  }

  /**
   * With H half sets of the target, all targets' A, its emphasis e and the sum of emphases E, it is
   * |H E - e A| / 2 E sets away from its share.
   */
  private void chargeDistance(Target target) {
    long all = problem.targets().stream().mapToLong(Target::emphasis).sum();
    List<Long> perExercise =
        work.choices().stream().map(choice -> away(choice.exercise(), target, all)).toList();
    long up = extreme(perExercise, Comparator.reverseOrder());
    long down = -extreme(perExercise, Comparator.naturalOrder());
    LinearExpr away = work.sum(choice -> true, choice -> away(choice.exercise(), target, all));
    ShareCost steps = new ShareCost(all, Math.max(up, down));
    IntVar units = model.newIntVar(0, steps.most(), "");
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (ShareCost.Step step : steps.steps()) {
      BoolVar reached = model.newBoolVar("");
      sum.addTerm(reached, step.units());
      reach(away, 1, step.from(), up, reached);
      reach(away, -1, step.from(), down, reached);
    }
    model.addEquality(units, sum.build());
    for (ShareCost.Edge edge : steps.hull()) {
      for (int sign : new int[] {1, -1}) {
        LinearExprBuilder line = LinearExpr.newBuilder();
        line.addTerm(units, edge.run());
        line.addTerm(away, -sign * edge.rise());
        model.addGreaterOrEqual(line.build(), edge.offset());
      }
    }
    objective.charge(UnevenVolume.class, units);
  }

  /** The step is reached if the distance, in one direction, is at least as far as it. */
  private void reach(LinearExpr away, int sign, long from, long most, BoolVar reached) {
    if (most >= from) {
      LinearExprBuilder slack = LinearExpr.newBuilder();
      slack.addTerm(away, sign);
      slack.addTerm(reached, -(most - from + 1));
      model.addLessOrEqual(slack.build(), from - 1);
    }
  }

  private long away(Exercise exercise, Target target, long all) {
    long sets = problem.targets().stream().mapToLong(t -> halfSets(exercise, t)).sum();
    return halfSets(exercise, target) * all - target.emphasis() * sets;
  }

  private long halfSets(Exercise exercise, Target target) {
    int sets = 0;
    if (exercise.primary().contains(target.muscle())) {
      sets = 2;
    } else if (exercise.secondary().contains(target.muscle())) {
      sets = 1;
    }
    return (long) sets * problem.clock().rounds();
  }

  private long extreme(List<Long> amounts, Comparator<Long> order) {
    List<Long> sorted = new ArrayList<>(amounts);
    sorted.sort(order);
    long sum = 0;
    for (int i = 0; i < Math.min(most, sorted.size()); i++) {
      sum += order.compare(sorted.get(i), 0L) < 0 ? sorted.get(i) : 0;
    }
    return sum;
  }
}
