package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Identified;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.WeekFacts;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.SessionConstraint.Level;
import counterset.planning.constraints.WeekConstraint;
import counterset.planning.scoring.Ledger;
import counterset.planning.scoring.ScoreSink;
import counterset.planning.scoring.WeekLedger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
    return ids(SessionConstraint.values());
  }

  static Set<String> weekConstraints() {
    return ids(WeekConstraint.values());
  }

  private static Set<String> ids(Identified[] constraints) {
    return Arrays.stream(constraints).map(Identified::id).collect(Collectors.toSet());
  }

  Said score(ScoreCase scoreCase) {
    List<SessionSolution> sessions =
        scoreCase.sessions().stream().map(session -> solution(session)).toList();
    Said said = sessions.stream().map(Scorer::said).reduce(Said::plus).orElseThrow();
    return scoreCase
        .week()
        .map(
            week -> {
              List<SessionFacts> facts = sessions.stream().map(SessionSolution::getFacts).toList();
              WeekFacts all = new WeekFacts(week, catalogue, facts);
              return said.plus(said(WeekSolutions.join(all, sessions, Map.of())));
            })
        .orElse(said);
  }

  SessionSolution solution(Filled session) {
    SessionFacts facts =
        new SessionFacts(session.problem(), catalogue, session.exercises(), session.supersets());
    SessionSolution empty = SessionSolutions.empty(facts, Map.of());
    List<Exercise> standIns = new ArrayList<>();
    session.standIns().forEach(standIns::addAll);
    return SessionSolutions.with(
        empty,
        candidates(facts, session.places()),
        candidates(facts, standIns),
        new boolean[session.places().size()]);
  }

  private static Candidate[] candidates(SessionFacts facts, List<Exercise> exercises) {
    return exercises.stream()
        .map(exercise -> exercise == null ? null : facts.candidate(exercise.id()).orElseThrow())
        .toArray(Candidate[]::new);
  }

  private static Said said(SessionSolution solution) {
    int[] sums = new int[Level.values().length];
    SortedMap<String, Tally> tallies = new TreeMap<>();
    for (Ledger.Entry entry : Ledger.of(solution)) {
      SessionConstraint constraint = entry.constraint();
      int weight = constraint.weight(solution.getFacts().problem());
      int points = entry.amount() * (constraint.isReward() ? weight : -weight);
      sums[constraint.level().ordinal()] += points;
      String key =
          entry.track() == ScoreSink.MAIN
              ? constraint.id()
              : Said.key(constraint.id(), entry.track());
      tallies.merge(key, new Tally(1, entry.amount(), points), Tally::plus);
    }
    return new Said(sums[0], sums[1], sums[2], tallies);
  }

  private static Said said(WeekSolution week) {
    int[] sums = new int[Level.values().length];
    SortedMap<String, Tally> tallies = new TreeMap<>();
    for (WeekLedger.Entry entry : WeekLedger.of(week)) {
      WeekConstraint constraint = entry.constraint();
      int points = -entry.amount() * constraint.weight(week.getFacts().problem());
      sums[constraint.level(week.getFacts().problem()).ordinal()] += points;
      tallies.merge(constraint.id(), new Tally(1, entry.amount(), points), Tally::plus);
    }
    return new Said(sums[0], sums[1], sums[2], tallies);
  }
}
