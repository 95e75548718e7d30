package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.ExerciseFilter;
import counterset.score.Ledger;
import counterset.score.Level;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Turns what the constraints say of a solution into the model's words. */
final class Scoring {

  private Scoring() {}

  /** A session as it is, to be scored, whatever it breaks. */
  static Lineup lineup(Problem problem, Session session, Catalogue catalogue) {
    int fit = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    int last = session.supersets().stream().mapToInt(Superset::number).max().orElse(0);
    Set<Exercise> exercises = new LinkedHashSet<>(new ExerciseFilter(problem, catalogue).main());
    session.work().forEach(exercises::add);
    session.modifications().forEach(track -> exercises.addAll(track.values()));
    SessionFacts facts =
        new SessionFacts(problem, catalogue, List.copyOf(exercises), Math.max(fit, last));
    return Lineup.of(facts, session);
  }

  /** Every match of a session, in the order of the constraints. */
  static List<Match> matches(Lineup lineup) {
    return Ledger.of(lineup).stream().map(entry -> match(entry, lineup)).toList();
  }

  private static Match match(Ledger.Entry entry, Lineup lineup) {
    List<At> places =
        IntStream.of(entry.first(), entry.second())
            .filter(place -> place >= 0)
            .mapToObj(lineup::at)
            .toList();
    Optional<String> track =
        entry.track() < 0
            ? Optional.empty()
            : Optional.of(String.join("+", lineup.facts().problem().tracks().get(entry.track())));
    return new Match(
        entry.constraint().id(), entry.amount(), entry.points(), places, entry.subject(), track);
  }

  /** What matches add up to, by level and by constraint. */
  static PlanScore score(Problem problem, List<Match> matches) {
    List<PlanScore.Line> lines = new ArrayList<>();
    int[] sums = new int[Level.values().length];
    for (Constraint constraint : Constraints.OF_SESSIONS) {
      List<Match> own =
          matches.stream().filter(match -> match.constraint().equals(constraint.id())).toList();
      int score = own.stream().mapToInt(Match::points).sum();
      sums[constraint.level().ordinal()] += score;
      lines.add(
          new PlanScore.Line(
              constraint.id(),
              constraint.level().id(),
              constraint.weight(problem.weights()),
              own.size(),
              score,
              constraint.sentence()));
    }
    return new PlanScore(sums[0], sums[1], sums[2], lines);
  }
}
