package counterset.explain;

import counterset.explain.Turnover.Part;
import counterset.model.English;
import counterset.score.MatchByMatch;
import counterset.score.PlanConstraint;
import counterset.score.Total;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What came and what went of one constraint, as a clause. */
final class TurnoverWords {

  /** With more, a total is easier to read. */
  private static final int MOST_CLAUSES = 2;

  private TurnoverWords() {}

  /** A clause that begins with a small letter, or with a name. */
  static String clause(Turnover turnover) {
    return turnover.constraint() instanceof MatchByMatch constraint
        ? clauses(turnover, constraint)
        : total(turnover);
  }

  private static String clauses(Turnover turnover, MatchByMatch constraint) {
    List<Part> parts = new ArrayList<>(turnover.parts());
    if (constraint.isToldInOrder()) {
      parts.sort(Comparator.comparing(part -> part.told().match().places().get(0)));
    }
    Map<String, List<Part>> alike =
        parts.stream()
            .collect(
                Collectors.groupingBy(
                    part -> part.clause(constraint), LinkedHashMap::new, Collectors.toList()));
    boolean told =
        constraint.tellsParts() || parts.stream().allMatch(part -> part.told().isWhole());
    if (alike.size() > MOST_CLAUSES || !told) {
      return total(turnover);
    }
    return exchange(turnover, constraint)
        .orElseGet(
            () ->
                alike.entrySet().stream()
                    .map(
                        clause ->
                            clause.getKey() + places(turnover.constraint(), clause.getValue()))
                    .collect(Collectors.joining("; ")));
  }

  /** One that came instead of one that went. */
  private static Optional<String> exchange(Turnover turnover, MatchByMatch constraint) {
    List<String> came = exercises(turnover, true);
    List<String> went = exercises(turnover, false);
    return came.size() == 1 && went.size() == 1
        ? constraint.became(came.get(0), went.get(0), turnover.points() > 0)
        : Optional.empty();
  }

  private static List<String> exercises(Turnover turnover, boolean came) {
    return turnover.parts().stream()
        .filter(part -> part.came() == came)
        .map(part -> part.told().exercise())
        .toList();
  }

  private static String places(PlanConstraint constraint, List<Part> parts) {
    return constraint.tellsPlaces()
        ? parts.stream()
            .map(part -> constraint.where(part.told().match()))
            .distinct()
            .collect(Collectors.joining(", ", " (", ")"))
        : "";
  }

  private static String total(Turnover turnover) {
    boolean better = turnover.points() > 0;
    PlanConstraint constraint = turnover.constraint();
    String total = constraint.total(new Total(Math.abs(turnover.amount()), better));
    List<String> subjects =
        turnover.parts().stream()
            .filter(part -> part.points() > 0 == better)
            .map(part -> English.lower(part.told().subject()))
            .toList();
    return constraint.tellsSubjects() && subjects.size() <= MOST_CLAUSES + 1
        ? total + " (" + English.list(subjects) + ")"
        : total;
  }
}
