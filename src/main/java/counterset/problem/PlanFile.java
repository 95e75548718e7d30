package counterset.problem;

import counterset.json.JsonDocument;
import counterset.model.Problem;
import java.util.List;

/**
 * The decisions of a plan file, whoever wrote it. What follows from them (score, clock, coverage)
 * is left in the document, unchecked.
 *
 * @param warmUp exercise ids in the order of the timeline
 * @param coolDown exercise ids in the order of the timeline, both sides of a stretch counted once
 */
public record PlanFile(
    JsonDocument document,
    Problem problem,
    List<PlannedSuperset> supersets,
    List<String> warmUp,
    List<String> coolDown) {

  public PlanFile {
    supersets = List.copyOf(supersets);
    warmUp = List.copyOf(warmUp);
    coolDown = List.copyOf(coolDown);
  }
}
