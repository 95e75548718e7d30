package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import counterset.score.LightBeforeHeavy;
import java.util.List;

/**
 * Light work before heavy work in a later superset.
 *
 * <p>The steps by which the later of two is heavier are the thresholds between their tiers. So for
 * each threshold the pairs count that have one exercise below it in the earlier superset and one
 * above it in the later.
 */
final class HeavyFirst {

  /** The tier of power. */
  private static final int HIGHEST = 4;

  private final CpModel model;
  private final List<Layer> layers;
  private final int perSuperset;

  HeavyFirst(CpModel model, List<Layer> layers, int perSuperset) {
    this.model = model;
    this.layers = layers;
    this.perSuperset = perSuperset;
  }

  void charge(Objective objective) {
    LinearExprBuilder steps = LinearExpr.newBuilder();
    for (int threshold = 0; threshold < HIGHEST; threshold++) {
      BoolVar[][] light = new BoolVar[layers.size()][];
      BoolVar[][] heavy = new BoolVar[layers.size()][];
      for (int superset = 0; superset < layers.size(); superset++) {
        light[superset] = atLeast(layers.get(superset), threshold, false);
        heavy[superset] = atLeast(layers.get(superset), threshold, true);
      }
      for (int later = 1; later < layers.size(); later++) {
        for (int earlier = 0; earlier < later; earlier++) {
          both(light[earlier], heavy[later], steps);
        }
      }
    }
    objective.charge(LightBeforeHeavy.class, steps.build());
  }

  /** By number less 1, whether so many exercises of a superset are on one side of a threshold. */
  private BoolVar[] atLeast(Layer layer, int threshold, boolean above) {
    BoolVar[] literals = new BoolVar[perSuperset];
    for (int number = 1; number <= perSuperset; number++) {
      int least = number;
      literals[number - 1] = model.newBoolVar("");
      model.addEquality(
          layer.some(filling -> count(filling, threshold, above) >= least), literals[number - 1]);
    }
    return literals;
  }

  private static long count(Filling filling, int threshold, boolean above) {
    return filling.occurrences().stream()
        .filter(choice -> choice.merit().tier() > threshold == above)
        .count();
  }

  private void both(BoolVar[] light, BoolVar[] heavy, LinearExprBuilder steps) {
    for (BoolVar some : light) {
      for (BoolVar others : heavy) {
        BoolVar pair = model.newBoolVar("");
        model.addBoolOr(new Literal[] {some.not(), others.not(), pair});
        steps.add(pair);
      }
    }
  }
}
