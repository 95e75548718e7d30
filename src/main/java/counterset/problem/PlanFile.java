package counterset.problem;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.JsonDocument;
import counterset.model.At;
import counterset.model.Problem;
import counterset.model.SolverNote;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  /** How it was found, if the file says so completely. */
  public Optional<SolverNote> solver() {
    Cursor at = Cursor.at(new Faults(document), "/solver");
    Optional<Long> seed = at.field("seed").whole();
    Optional<String> effort = at.field("effort").text();
    Optional<String> version = at.field("version").text();
    Optional<Long> moves = at.field("moves").whole();
    Optional<Boolean> complete = at.field("complete").bool();
    boolean known = seed.isPresent() && effort.isPresent() && version.isPresent();
    return known && moves.isPresent() && complete.isPresent()
        ? Optional.of(
            new SolverNote(seed.get(), effort.get(), version.get(), moves.get(), complete.get()))
        : Optional.empty();
  }
}
