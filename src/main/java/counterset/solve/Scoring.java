package counterset.solve;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.MainLift;
import counterset.model.Match;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.model.WeekProblem;
import counterset.planning.ExerciseFilter;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.SessionConstraint.Level;
import counterset.planning.constraints.WeekConstraint;
import counterset.planning.scoring.Ledger;
import counterset.planning.scoring.ScoreSink;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Turns what the constraints say of a solution into the model's words. */
final class Scoring {

  private Scoring() {}

  /** The weights of a problem that differ from the default, as the solver takes them. */
  static Map<String, HardMediumSoftScore> weights(Problem problem) {
    Map<String, HardMediumSoftScore> weights = new LinkedHashMap<>();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      if (problem.weights().containsKey(constraint.id())) {
        weights.put(constraint.id(), constraint.points(constraint.weight(problem)));
      }
    }
    return weights;
  }

  /** The weights of a week that differ from the default, as the solver takes them. */
  static Map<String, HardMediumSoftScore> weights(WeekProblem problem) {
    Map<String, HardMediumSoftScore> weights = new LinkedHashMap<>();
    for (WeekConstraint constraint : WeekConstraint.values()) {
      if (constraint.isOverridden(problem)) {
        weights.put(constraint.id(), constraint.points(problem, constraint.weight(problem)));
      }
    }
    return weights;
  }

  /** A session as it is, to be scored, whatever it breaks. */
  static SessionSolution solution(Problem problem, Session session, Catalogue catalogue) {
    int fit = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    int last = session.supersets().stream().mapToInt(Superset::number).max().orElse(0);
    Set<Exercise> exercises = new LinkedHashSet<>(new ExerciseFilter(problem, catalogue).main());
    session.work().forEach(exercises::add);
    session.modifications().forEach(track -> exercises.addAll(track.values()));
    SessionFacts facts =
        new SessionFacts(problem, catalogue, List.copyOf(exercises), Math.max(fit, last));
    return SessionSolutions.of(facts, session, weights(problem));
  }

  /** Every match of a solution, in the order of the constraints. */
  static List<Match> matches(SessionSolution solution) {
    Problem problem = solution.getFacts().problem();
    return Ledger.of(solution).stream()
        .sorted((a, b) -> a.constraint().compareTo(b.constraint()))
        .map(entry -> match(entry, solution, problem))
        .toList();
  }

  private static Match match(Ledger.Entry entry, SessionSolution solution, Problem problem) {
    List<At> places =
        IntStream.of(entry.first(), entry.second())
            .filter(place -> place != ScoreSink.NOWHERE)
            .mapToObj(place -> solution.getPlaces().get(place).at())
            .toList();
    int weight = entry.constraint().weight(problem);
    int points = entry.amount() * (entry.constraint().isReward() ? weight : -weight);
    Optional<String> track =
        entry.track() == ScoreSink.MAIN
            ? Optional.empty()
            : Optional.of(String.join("+", problem.tracks().get(entry.track())));
    return new Match(
        entry.constraint().id(),
        entry.amount(),
        points,
        places,
        subject(entry, solution.getFacts()),
        track);
  }

  private static Optional<String> subject(Ledger.Entry entry, SessionFacts facts) {
    Problem problem = facts.problem();
    return switch (entry.constraint()) {
      case TARGET_UNCOVERED, UNEVEN_VOLUME ->
          Optional.of(problem.targets().get(entry.detail()).muscle());
      case MAIN_LIFT_MISSING -> Optional.of(MainLift.values()[entry.detail()].id());
      case EQUIPMENT_UNUSED -> Optional.of(problem.equipment().get(entry.detail()).id());
      case INCLUDE_MISSING -> Optional.of(new ArrayList<>(problem.include()).get(entry.detail()));
      case TRACK_REPEATED, MODIFICATION_AWKWARD ->
          Optional.of(facts.candidates().get(entry.detail()).exercise().id());
      case KEPT_MOVED -> Optional.of(problem.keep().get(entry.detail()).exercise());
      default -> Optional.empty();
    };
  }

  /** What matches add up to, by level and by constraint. */
  static PlanScore score(Problem problem, List<Match> matches) {
    List<PlanScore.Line> lines = new ArrayList<>();
    int[] sums = new int[Level.values().length];
    for (SessionConstraint constraint : SessionConstraint.values()) {
      List<Match> own =
          matches.stream().filter(match -> match.constraint().equals(constraint.id())).toList();
      int score = own.stream().mapToInt(Match::points).sum();
      sums[constraint.level().ordinal()] += score;
      lines.add(
          new PlanScore.Line(
              constraint.id(),
              constraint.level().id(),
              constraint.weight(problem),
              own.size(),
              score,
              constraint.sentence()));
    }
    return new PlanScore(sums[0], sums[1], sums[2], lines);
  }
}
