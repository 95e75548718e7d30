package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Problem;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds exercises that the ask wants and rules out at the same time. */
final class ExerciseChecks {

  private final Catalogue catalogue;
  private final AskDraft draft;

  ExerciseChecks(Catalogue catalogue, AskDraft draft) {
    this.catalogue = catalogue;
    this.draft = draft;
  }

  void report() {
    Map<String, Span> wanted = new LinkedHashMap<>(draft.include);
    draft.kept.forEach(kept -> wanted.putIfAbsent(kept.keep().exercise(), kept.span()));
    wanted.forEach(this::check);
    places();
  }

  /** A wish for an exercise may be met by any of its variants. */
  private void check(String id, Span span) {
    Exercise named = catalogue.exercises().get(id);
    List<Exercise> ways =
        catalogue.exercises(Part.MAIN).stream()
            .filter(exercise -> exercise.id().equals(id) || exercise.root().equals(id))
            .toList();
    if (ways.stream().noneMatch(way -> against(way).isEmpty())) {
      draft.fault(
          span, '"' + named.name() + "\" " + against(named).orElse("cannot be done as asked."));
    }
  }

  private Optional<String> against(Exercise exercise) {
    for (Map.Entry<String, Span> entry : draft.exclude.entrySet()) {
      if (Problem.names(Set.of(entry.getKey()), exercise)) {
        return Optional.of(
            "is ruled out by " + entry.getValue().quoted() + ". Keep one of the two.");
      }
    }
    for (Map.Entry<String, Span> entry : draft.limitations.entrySet()) {
      if (!catalogue.limitations().get(entry.getKey()).allows(exercise)) {
        return Optional.of(
            "is not suitable with " + entry.getValue().quoted() + ". Choose another exercise.");
      }
    }
    int level = draft.level.or(Problem.DEFAULT_LEVEL);
    if (exercise.level() > level) {
      return Optional.of(
          "has level "
              + exercise.level()
              + ", above the level "
              + level
              + (draft.level.isSet() ? "" : " that is assumed")
              + ". Say \"level "
              + exercise.level()
              + "\" or choose another.");
    }
    return exercise.needs().stream().filter(need -> !isThere(need)).findFirst().map(this::missing);
  }

  private boolean isThere(Need need) {
    return catalogue.equipment().get(need.equipment()).alwaysThere()
        || draft.equipment.stream().anyMatch(item -> item.owned().serves(need));
  }

  private String missing(Need need) {
    String name = EquipmentText.of(catalogue.equipment().get(need.equipment()), need.count());
    String load = need.load().map(it -> it.id() + " ").orElse("");
    return "needs "
        + need.count()
        + " "
        + load
        + name
        + ", which the ask does not name. Name the equipment or choose another exercise.";
  }

  private void places() {
    Map<Object, AskDraft.Kept> seen = new HashMap<>();
    int positions = draft.perSuperset.or(2);
    for (AskDraft.Kept kept : draft.kept) {
      if (kept.keep().at().position() >= positions) {
        draft.fault(
            kept.span(),
            "There is no position "
                + kept.keep().at()
                + ": a superset has "
                + positions
                + (positions == 1 ? " position." : " positions."));
      }
      for (Object key : List.of(kept.keep().at(), kept.keep().exercise())) {
        AskDraft.Kept other = seen.putIfAbsent(key, kept);
        if (other != null && !other.keep().equals(kept.keep())) {
          draft.fault(kept.span(), Contradictions.contradicts(other.span()));
        }
      }
    }
  }
}
