package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import counterset.score.LightBeforeHeavy;
import java.util.List;
import java.util.function.Predicate;

/**
 * Light work before heavy work in a later superset.
 *
 * <p>The steps by which the later of two is heavier are the thresholds between their tiers. So for
 * each threshold the pairs count that have one exercise below it in the earlier superset and one
 * above it in the later. From standing to the floor no pair counts, unless the session is for the
 * upper body.
 */
final class HeavyFirst {

  /** The tier of power. */
  private static final int HIGHEST = 4;

  private final CpModel model;
  private final List<Layer> layers;
  private final int perSuperset;
  private final boolean floorLast;

  HeavyFirst(CpModel model, List<Layer> layers, int perSuperset, boolean floorLast) {
    this.model = model;
    this.layers = layers;
    this.perSuperset = perSuperset;
    this.floorLast = floorLast;
  }

  void charge(Objective objective) {
    LinearExprBuilder steps = LinearExpr.newBuilder();
    for (int threshold = 0; threshold < HIGHEST; threshold++) {
      if (floorLast) {
        charge(threshold, Choice::onFloor, choice -> true, steps);
        charge(threshold, choice -> !choice.onFloor(), choice -> !choice.onFloor(), steps);
      } else {
        charge(threshold, choice -> true, choice -> true, steps);
      }
    }
    objective.charge(LightBeforeHeavy.class, steps.build());
  }

  private void charge(
      int threshold, Predicate<Choice> first, Predicate<Choice> then, LinearExprBuilder steps) {
    BoolVar[][] light = new BoolVar[layers.size()][];
    BoolVar[][] heavy = new BoolVar[layers.size()][];
    for (int superset = 0; superset < layers.size(); superset++) {
      light[superset] =
          atLeast(layers.get(superset), first.and(c -> c.merit().tier() <= threshold));
      heavy[superset] = atLeast(layers.get(superset), then.and(c -> c.merit().tier() > threshold));
    }
    for (int later = 1; later < layers.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        both(light[earlier], heavy[later], steps);
      }
    }
  }

  /** By number less 1, whether a superset has so many exercises of a kind. */
  private BoolVar[] atLeast(Layer layer, Predicate<Choice> which) {
    BoolVar[] literals = new BoolVar[perSuperset];
    for (int number = 1; number <= perSuperset; number++) {
      int least = number;
      literals[number - 1] = model.newBoolVar("");
      model.addEquality(
          layer.some(filling -> filling.occurrences().stream().filter(which).count() >= least),
          literals[number - 1]);
    }
    return literals;
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
