package counterset.quality;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Problem;
import counterset.score.Ledger;
import counterset.score.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rules and wishes that references break by the ratings of the catalogue, and what it rates
 * their exercises down for: faults of its data or of definitions, mostly.
 */
final class DataFaults {

  private static final Set<String> RATED_DOWN =
      Set.of("offTarget", "lastResort", "easyWork", "partialRange", "twin");

  private DataFaults() {}

  /** One line a rule, exercise and reason, constraint by constraint. */
  static String text(List<Mapped> references, Catalogue catalogue) {
    Map<String, List<Integer>> faults = new TreeMap<>();
    for (Mapped mapped : references) {
      if (mapped.problem().isPresent()) {
        of(mapped, catalogue)
            .distinct()
            .forEach(
                fault ->
                    faults
                        .computeIfAbsent(fault, key -> new ArrayList<>())
                        .add(mapped.reference().number()));
      }
    }
    return faults.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, List<Integer>> it) -> it.getKey().split(":")[0])
                .thenComparing(it -> -it.getValue().size()))
        .map(it -> it.getKey() + "  (requests " + it.getValue() + ")\n")
        .collect(Collectors.joining());
  }

  private static Stream<String> of(Mapped mapped, Catalogue catalogue) {
    Judged judged = mapped.judged(catalogue);
    return judged.matches().stream()
        .filter(
            entry ->
                entry.constraint().level() != Level.SOFT
                    || RATED_DOWN.contains(entry.constraint().id()))
        .map(entry -> line(entry, judged, catalogue));
  }

  private static String line(Ledger.Entry entry, Judged judged, Catalogue catalogue) {
    String id = entry.constraint().id();
    if (entry.first() < 0) {
      return id + ": " + entry.subject().orElse("");
    }
    Exercise exercise = judged.exercises().get(entry.first());
    String then = entry.second() < 0 ? "" : " then " + judged.exercises().get(entry.second()).id();
    return id + ": " + exercise.id() + then + reason(entry, exercise, judged, catalogue);
  }

  private static String reason(
      Ledger.Entry entry, Exercise exercise, Judged judged, Catalogue catalogue) {
    Problem problem = judged.facts().problem();
    return switch (entry.constraint().id()) {
      case "aboveLevel" -> ", level " + exercise.level() + " above " + problem.level();
      case "equipmentMissing" -> ", needs " + exercise.needs();
      case "unsafeForClient" ->
          problem.limitations().stream()
              .map(catalogue.limitations()::get)
              .filter(limitation -> !limitation.allows(exercise))
              .map(limitation -> ", " + limitation.id() + ": " + broken(limitation, exercise))
              .collect(Collectors.joining());
      case "changeoverTooLong" -> ", " + entry.amount() + " s";
      default -> "";
    };
  }

  private static String broken(Limitation limitation, Exercise exercise) {
    List<String> rules = new ArrayList<>();
    exercise.traits().stream().filter(limitation.avoidTraits()::contains).forEach(rules::add);
    limitation.maxDemand().entrySet().stream()
        .filter(max -> exercise.demandOn(max.getKey()) > max.getValue())
        .map(max -> max.getKey().id() + " demand " + exercise.demandOn(max.getKey()))
        .forEach(rules::add);
    if (limitation.avoidPositions().contains(exercise.position())) {
      rules.add(exercise.position().id());
    }
    return String.join(", ", rules);
  }
}
