package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the present code says of sessions and weeks. */
final class Scorer {

  private final Catalogue catalogue;

  Scorer(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  static Set<String> sessionConstraints() {
    return ids(Constraints.OF_SESSIONS);
  }

  static Set<String> weekConstraints() {
    return ids(Constraints.OF_WEEKS);
  }

  private static Set<String> ids(List<? extends Constraint> constraints) {
    return constraints.stream().map(Constraint::id).collect(Collectors.toSet());
  }

  /** What the ledgers write down. */
  Said ledger(ScoreCase scoreCase) {
    List<Lineup> sessions = lineups(scoreCase);
    Said said = sessions.stream().map(Scorer::ledger).reduce(Said::plus).orElseThrow();
    return scoreCase
        .week()
        .map(
            week -> {
              WeekFacts facts =
                  new WeekFacts(week, catalogue, sessions.stream().map(Lineup::facts).toList());
              return said.plus(ledger(facts, sessions.stream().map(Lineup::places).toList()));
            })
        .orElse(said);
  }

  /** What the scores that drive a search add up to. */
  String sum(ScoreCase scoreCase) {
    int hard = 0;
    int medium = 0;
    int soft = 0;
    List<Lineup> sessions = lineups(scoreCase);
    for (Lineup session : sessions) {
      SessionScore own = new SessionScore(session.facts());
      own.compute(session.places());
      TrackScore tracks = new TrackScore(session.facts());
      tracks.compute(session.places(), session.standIns());
      hard += own.hard() + tracks.hard();
      medium += own.medium() + tracks.medium();
      soft += own.soft() + tracks.soft();
    }
    if (scoreCase.week().isPresent()) {
      WeekFacts facts =
          new WeekFacts(
              scoreCase.week().get(), catalogue, sessions.stream().map(Lineup::facts).toList());
      WeekScore week = new WeekScore(facts);
      for (WeekDay day : facts.days()) {
        week.add(day, sessions.get(day.index()).places());
      }
      hard += week.hard();
      medium += week.medium();
      soft += week.soft();
    }
    return hard + "/" + medium + "/" + soft;
  }

  private List<Lineup> lineups(ScoreCase scoreCase) {
    return scoreCase.sessions().stream().map(this::lineup).toList();
  }

  private Lineup lineup(Filled session) {
    SessionFacts facts =
        new SessionFacts(session.problem(), catalogue, session.exercises(), session.supersets());
    List<Exercise> standIns = new ArrayList<>();
    session.standIns().forEach(standIns::addAll);
    return new Lineup(facts, candidates(facts, session.places()), candidates(facts, standIns));
  }

  private static Candidate[] candidates(SessionFacts facts, List<Exercise> exercises) {
    return exercises.stream()
        .map(exercise -> exercise == null ? null : facts.candidate(exercise.id()).orElseThrow())
        .toArray(Candidate[]::new);
  }

  private static Said ledger(Lineup session) {
    int[] sums = new int[Level.values().length];
    SortedMap<String, Tally> tallies = new TreeMap<>();
    for (Ledger.Entry entry : Ledger.of(session)) {
      Constraint constraint = entry.constraint();
      sums[constraint.level().ordinal()] += entry.points();
      String key =
          entry.track() == Sink.MAIN ? constraint.id() : Said.key(constraint.id(), entry.track());
      tallies.merge(key, new Tally(1, entry.amount(), entry.points()), Tally::plus);
    }
    return new Said(sums[0], sums[1], sums[2], tallies);
  }

  private static Said ledger(WeekFacts facts, List<Candidate[]> sessions) {
    int[] sums = new int[Level.values().length];
    SortedMap<String, Tally> tallies = new TreeMap<>();
    for (WeekLedger.Entry entry : WeekLedger.of(facts, sessions)) {
      sums[entry.constraint().rule(facts.problem()).level().ordinal()] += entry.points();
      tallies.merge(
          entry.constraint().id(), new Tally(1, entry.amount(), entry.points()), Tally::plus);
    }
    return new Said(sums[0], sums[1], sums[2], tallies);
  }
}
