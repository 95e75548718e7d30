package counterset.explain;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.score.Constraints;
import counterset.score.MatchByMatch;
import counterset.score.Names;
import counterset.score.PlanConstraint;
import counterset.score.Told;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The matches of one constraint that differ between two plans; those of a track by themselves.
 *
 * @param track the name of the track whose followers they concern; empty if they are about the
 *     session itself
 * @param parts in the order of the plans, those that went first
 */
record Turnover(PlanConstraint constraint, Optional<String> track, List<Part> parts) {

  /**
   * What differs about one subject.
   *
   * @param told one of its matches, in the other plan if it came, else in the first
   * @param points what that adds to the score
   */
  record Part(Told told, boolean came, int points) {

    String clause(MatchByMatch constraint) {
      return came ? constraint.came(told) : constraint.went(told);
    }
  }

  /**
   * What a match is about: exercises, wherever in its session they stand, or what happens between
   * two places, whatever stands there.
   */
  private record Key(PlanConstraint constraint, Optional<String> track, List<String> subjects) {}

  /** What two plans differ in, in the order of the first match. */
  static Collection<Turnover> between(Plan from, Plan to, Names names) {
    Map<Key, List<Told>> before = byKey(from, to, names);
    Map<Key, List<Told>> after = byKey(to, from, names);
    Set<Key> keys = new LinkedHashSet<>(before.keySet());
    keys.addAll(after.keySet());
    Map<Key, Turnover> turnovers = new LinkedHashMap<>();
    for (Key key : keys) {
      Part part = part(before.getOrDefault(key, List.of()), after.getOrDefault(key, List.of()));
      if (part.points() != 0) {
        turnovers
            .computeIfAbsent(
                new Key(key.constraint(), key.track(), List.of()),
                group -> new Turnover(key.constraint(), key.track(), new ArrayList<>()))
            .parts()
            .add(part);
      }
    }
    return turnovers.values();
  }

  private static Map<Key, List<Told>> byKey(Plan plan, Plan other, Names names) {
    Map<Key, List<Told>> byKey = new LinkedHashMap<>();
    for (Match match : plan.matches()) {
      PlanConstraint constraint = Constraints.of(match);
      Told told = new Told(match, plan, other, match.amount(), true, names);
      List<String> subjects = new ArrayList<>();
      match.subject().ifPresent(subjects::add);
      for (At at : match.places()) {
        Optional<Exercise> exercise = constraint.isBetweenPlaces() ? Optional.empty() : told.at(at);
        subjects.add(exercise.map(Exercise::id).orElse(at.toString()));
      }
      byKey
          .computeIfAbsent(new Key(constraint, match.track(), subjects), key -> new ArrayList<>())
          .add(told);
    }
    return byKey;
  }

  private static Part part(List<Told> before, List<Told> after) {
    boolean came = amount(after) > amount(before);
    List<Told> more = came ? after : before;
    List<Told> fewer = came ? before : after;
    return new Part(
        more.get(0).part(amount(more) - amount(fewer), fewer.isEmpty()),
        came,
        points(after) - points(before));
  }

  private static int amount(List<Told> told) {
    return told.stream().mapToInt(Told::amount).sum();
  }

  private static int points(List<Told> told) {
    return told.stream().mapToInt(it -> it.match().points()).sum();
  }

  /** What all of it adds to the score. */
  int points() {
    return parts.stream().mapToInt(Part::points).sum();
  }

  /** Units that came less those that went. */
  int amount() {
    return parts.stream()
        .mapToInt(part -> part.came() ? part.told().amount() : -part.told().amount())
        .sum();
  }

  /** Where, in order. */
  List<At> places() {
    return parts.stream()
        .flatMap(part -> part.told().match().places().stream())
        .distinct()
        .sorted()
        .toList();
  }
}
