package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.planning.constraints.SessionConstraint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What came and what went of one constraint, as a clause. */
final class TurnoverWords {

  /** With more, a total is easier to read. */
  private static final int MOST_CLAUSES = 2;

  private final Plan from;
  private final Plan to;
  private final PairingWords pairing;
  private final PartNames names;
  private final ComingWords coming;
  private final GoingWords going;

  TurnoverWords(Plan from, Plan to, Catalogue catalogue) {
    this.from = from;
    this.to = to;
    this.pairing = new PairingWords(catalogue);
    this.names = new PartNames(catalogue);
    this.coming = new ComingWords(names);
    this.going = new GoingWords(names);
  }

  /** A clause that begins with a small letter, or with a name. */
  String clause(Turnover turnover) {
    return switch (turnover.constraint()) {
      case EQUIPMENT_CHANGE,
          CHANGEOVER_SECONDS,
          FLOOR_TRIP,
          LIGHT_BEFORE_HEAVY,
          TOO_LIGHT,
          ONE_SIDED_SHARE,
          CLOCK_OVERRUN ->
          TotalWords.of(turnover);
      case UNEVEN_VOLUME -> TotalWords.of(turnover) + muscles(turnover);
      case OPPOSING_PAIR -> pairs(turnover);
      default -> parts(turnover);
    };
  }

  private String parts(Turnover turnover) {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Turnover.Part part : turnover.parts()) {
      String clause = part.came() ? coming.clause(part) : going.clause(part);
      places.computeIfAbsent(clause, key -> new ArrayList<>()).add(PartNames.places(part));
    }
    if (places.size() > MOST_CLAUSES
        || turnover.parts().stream().anyMatch(TurnoverWords::isByDegree)) {
      return TotalWords.of(turnover);
    }
    return TotalWords.ofTwo(turnover, names)
        .orElseGet(
            () ->
                places.entrySet().stream()
                    .map(entry -> entry.getKey() + where(turnover, entry.getValue()))
                    .collect(Collectors.joining("; ")));
  }

  /** Whether the exercises alone do not tell what came or went. */
  private static boolean isByDegree(Turnover.Part part) {
    return part.match().constraint().equals(SessionConstraint.JOINT_AGAIN.id()) && !part.whole();
  }

  /** Where it is, if the exercises are not named. */
  private static String where(Turnover turnover, List<String> places) {
    return switch (turnover.constraint()) {
      case CHANGEOVER_TOO_LONG, SAME_MUSCLE_IN_A_ROW, JOINT_AGAIN ->
          " (" + String.join(", ", new LinkedHashSet<>(places)) + ")";
      default -> "";
    };
  }

  /** The muscle groups that the change is about. */
  private String muscles(Turnover turnover) {
    List<String> muscles =
        turnover.parts().stream()
            .filter(part -> part.points() > 0 == turnover.points() > 0)
            .map(names::subject)
            .map(English::lower)
            .toList();
    return muscles.size() > MOST_CLAUSES + 1 ? "" : " (" + English.list(muscles) + ")";
  }

  private String pairs(Turnover turnover) {
    List<Integer> numbers =
        turnover.places().stream().map(At::superset).distinct().collect(Collectors.toList());
    if (numbers.size() > MOST_CLAUSES) {
      return TotalWords.of(turnover);
    }
    List<String> clauses = new ArrayList<>();
    for (int number : numbers) {
      clauses.add(pair(number, turnover));
    }
    return String.join("; ", clauses);
  }

  private String pair(int number, Turnover turnover) {
    List<Turnover.Part> own =
        turnover.parts().stream()
            .filter(part -> part.match().places().get(0).superset() == number)
            .toList();
    String before = superset(from, number).map(pairing::of).orElse("nothing");
    String after = superset(to, number).map(pairing::of).orElse("nothing");
    String superset = "superset " + number;
    if (own.size() > 1 || !own.get(0).whole()) {
      return superset + " is " + after + " instead of " + before;
    }
    return superset + (own.get(0).came() ? " is now " + after : " is no longer " + before);
  }

  private static Optional<Superset> superset(Plan plan, int number) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == number)
        .findFirst();
  }
}
