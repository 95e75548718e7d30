package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.score.EquipmentUnused;
import counterset.score.IncludeMissing;
import counterset.score.SupersetEmpty;
import java.util.List;

/**
 * What the session exists for beside its targets: full supersets, equipment, exercises asked for.
 */
record Wishes(CpModel model, Problem problem, Catalogue catalogue, Objective objective) {

  void charge(List<Layer> layers, Work work) {
    for (Layer layer : layers) {
      objective.charge(SupersetEmpty.class, layer.some(filling -> !filling.isFull()));
    }
    for (Owned owned : problem.equipment()) {
      objective.charge(
          EquipmentUnused.class,
          Objective.atLeast(model, lacking(work.count(e -> uses(e, owned))), 1));
    }
    for (String id : problem.include()) {
      objective.charge(
          IncludeMissing.class,
          Objective.atLeast(model, lacking(work.count(e -> e.id().equals(id))), 1));
    }
  }

  private static LinearExpr lacking(LinearExpr count) {
    LinearExprBuilder lacking = LinearExpr.newBuilder();
    lacking.addTerm(count, -1);
    lacking.add(1);
    return lacking.build();
  }

  /** Whether it needs the equipment, or is done where the equipment gives comfort. */
  private boolean uses(Exercise exercise, Owned owned) {
    return exercise.needs().stream().anyMatch(need -> need.equipment().equals(owned.id()))
        || catalogue.equipment().get(owned.id()).comfortIn().contains(exercise.position());
  }
}
