package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import counterset.score.FamilyAgain;
import counterset.score.OneSidedShare;
import counterset.score.TooLight;
import java.util.List;

/** What only the session as a whole has: its mean intensity, its one-sided share, its families. */
record Whole(CpModel model, Objective objective, List<Layer> layers, Work work) {

  private static final int MODERATE = 2;

  /**
   * Steps of intensity short of 2 a position.
   *
   * @param positions of the session
   */
  void chargeLightness(int positions) {
    LinearExpr light =
        work.sum(
            choice -> true,
            choice ->
                (long) (MODERATE - choice.exercise().intensity())
                    * Tastes.positions(choice.exercise()));
    objective.charge(TooLight.class, Objective.atLeast(model, light, MODERATE * positions));
  }

  /** A quarter, rounded down, to a half, rounded up, of the supersets; only pairs can be. */
  void chargeOneSidedShare() {
    int supersets = layers.size();
    LinearExprBuilder over = LinearExpr.newBuilder();
    layers.forEach(layer -> over.add(layer.some(Filling::isOneSided)));
    over.add(-(supersets + 1) / 2);
    LinearExprBuilder under = LinearExpr.newBuilder();
    layers.forEach(layer -> under.addTerm(layer.some(Filling::isOneSided), -1));
    under.add(supersets / 4);
    IntVar away = model.newIntVar(0, supersets, "");
    model.addGreaterOrEqual(away, over.build());
    model.addGreaterOrEqual(away, under.build());
    objective.charge(OneSidedShare.class, away);
  }

  /** With m exercises of a family, m (m - 1) / 2 pairs: the highest of its chords. */
  void chargeFamilies(int most) {
    for (List<Choice> family : work.groups(Exercise::family).values()) {
      int size = Math.min(most, family.size());
      if (size > 1) {
        IntVar pairs = model.newIntVar(0, (long) size * (size - 1) / 2, "");
        LinearExpr count = work.sum(family::contains, choice -> 1);
        for (int m = 1; m < size; m++) {
          LinearExprBuilder chord = LinearExpr.newBuilder();
          chord.addTerm(count, m);
          chord.add(-(long) m * (m + 1) / 2);
          model.addGreaterOrEqual(pairs, chord.build());
        }
        objective.charge(FamilyAgain.class, pairs);
      }
    }
  }
}
