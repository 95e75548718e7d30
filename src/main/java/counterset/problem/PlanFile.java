package counterset.problem;

import counterset.json.JsonDocument;
import counterset.model.At;
import counterset.model.Problem;
import java.util.List;
import java.util.Map;

/**
 * The decisions of a plan file, whoever wrote it. What follows from them (score, clock, coverage)
 * is left in the document, unchecked.
 *
 * @param warmUp exercise ids in the order of the timeline
 * @param coolDown exercise ids in the order of the timeline, both sides of a stretch counted once
 * @param modifications by track, in the order of the problem's tracks, the ids of what its
 *     followers do instead, by place; for a unilateral exercise by its first place
 */
public record PlanFile(
    JsonDocument document,
    Problem problem,
    List<PlannedSuperset> supersets,
    List<String> warmUp,
    List<String> coolDown,
    List<Map<At, String>> modifications) {

  public PlanFile {
    supersets = List.copyOf(supersets);
    warmUp = List.copyOf(warmUp);
    coolDown = List.copyOf(coolDown);
    modifications = List.copyOf(modifications);
  }
}
