package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.planning.constraints.SessionConstraint;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The matches of one constraint that differ between two plans; those of a track by themselves.
 *
 * @param track the name of the track whose followers they concern; empty if they are about the
 *     session itself
 * @param parts in the order of the plans, those that went first
 */
record Turnover(SessionConstraint constraint, Optional<String> track, List<Part> parts) {

  /**
   * What differs about one subject.
   *
   * @param match one of its matches
   * @param plan the one that the match is of: the other plan if it came, else the first
   * @param whole whether the other of the two plans has no such match at all
   * @param amount units that came or went, at least 0
   * @param points what that adds to the score
   */
  record Part(Match match, Plan plan, boolean came, boolean whole, int amount, int points) {}

  /**
   * What a match is about: exercises, wherever in its session they stand, or what happens between
   * two places, whatever stands there.
   */
  private record Key(String constraint, Optional<String> track, List<String> subjects) {}

  /** What two plans differ in, in the order of the first match. */
  static Collection<Turnover> between(Plan from, Plan to, Catalogue catalogue) {
    Map<Key, List<Match>> before = byKey(from, catalogue);
    Map<Key, List<Match>> after = byKey(to, catalogue);
    Map<Key, Turnover> turnovers = new LinkedHashMap<>();
    before.forEach((key, matches) -> compare(key, matches, after, from, to, turnovers));
    after.forEach(
        (key, matches) -> {
          if (!before.containsKey(key)) {
            add(key, part(matches, List.of(), to, true), turnovers);
          }
        });
    return turnovers.values();
  }

  private static void compare(
      Key key,
      List<Match> matches,
      Map<Key, List<Match>> after,
      Plan from,
      Plan to,
      Map<Key, Turnover> turnovers) {
    List<Match> others = after.getOrDefault(key, List.of());
    boolean more = amount(others) > amount(matches);
    Part part = more ? part(others, matches, to, true) : part(matches, others, from, false);
    if (part.points() != 0) {
      add(key, part, turnovers);
    }
  }

  private static void add(Key key, Part part, Map<Key, Turnover> turnovers) {
    turnovers
        .computeIfAbsent(
            new Key(key.constraint(), key.track(), List.of()),
            group ->
                new Turnover(
                    ScoreWords.constraint(key.constraint()), key.track(), new ArrayList<>()))
        .parts()
        .add(part);
  }

  private static Part part(List<Match> more, List<Match> fewer, Plan plan, boolean came) {
    int points = points(more) - points(fewer);
    return new Part(
        more.get(0),
        plan,
        came,
        fewer.isEmpty(),
        amount(more) - amount(fewer),
        came ? points : -points);
  }

  private static int amount(List<Match> matches) {
    return matches.stream().mapToInt(Match::amount).sum();
  }

  private static int points(List<Match> matches) {
    return matches.stream().mapToInt(Match::points).sum();
  }

  private static Map<Key, List<Match>> byKey(Plan plan, Catalogue catalogue) {
    Map<Key, List<Match>> byKey = new LinkedHashMap<>();
    for (Match match : plan.matches()) {
      List<String> subjects = new ArrayList<>();
      match.subject().ifPresent(subjects::add);
      MatchNames named = new MatchNames(TrackFaultWords.planOf(match, plan), catalogue);
      boolean between = isBetweenPlaces(ScoreWords.constraint(match.constraint()));
      for (At at : match.places()) {
        String exercise = named.exercise(at).map(Exercise::id).orElse(at.toString());
        subjects.add(between ? at.toString() : exercise);
      }
      Key key = new Key(match.constraint(), match.track(), subjects);
      byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(match);
    }
    return byKey;
  }

  private static boolean isBetweenPlaces(SessionConstraint constraint) {
    return switch (constraint) {
      case CHANGEOVER_TOO_LONG,
          EQUIPMENT_CHANGE,
          CHANGEOVER_SECONDS,
          FLOOR_TRIP,
          OPPOSING_PAIR,
          SAME_MUSCLE_IN_A_ROW,
          JOINT_AGAIN ->
          true;
      default -> false;
    };
  }

  /** What all of it adds to the score. */
  int points() {
    return parts.stream().mapToInt(Part::points).sum();
  }

  /** Units that came less those that went. */
  int amount() {
    return parts.stream().mapToInt(part -> part.came() ? part.amount() : -part.amount()).sum();
  }

  /** Where, in order. */
  List<At> places() {
    return parts.stream()
        .flatMap(part -> part.match().places().stream())
        .distinct()
        .sorted()
        .toList();
  }
}
