package counterset.quality;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.Ledger;
import counterset.score.Level;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * A session as the program's own constraints see it.
 *
 * @param places superset by superset, full
 */
record Judged(SessionFacts facts, List<Candidate> places) {

  /** What rests on ratings of single exercises and on what is a variant: {@link DataFaults}. */
  static final Set<String> RATINGS =
      Set.of("aboveLevel", "unsafeForClient", "equipmentMissing", "excluded", "exerciseRepeated");

  /** A session of whole supersets, whatever it breaks. */
  static Judged of(Problem problem, Catalogue catalogue, List<Exercise> exercises) {
    return of(problem, catalogue, exercises, List.of());
  }

  /** The same, compiled together with exercises that might stand in it. */
  static Judged of(
      Problem problem, Catalogue catalogue, List<Exercise> exercises, Collection<Exercise> others) {
    Set<Exercise> all = new LinkedHashSet<>(new ExerciseFilter(problem, catalogue).main());
    all.addAll(exercises);
    all.addAll(others);
    SessionFacts facts =
        new SessionFacts(problem, catalogue, all, exercises.size() / problem.clock().perSuperset());
    return new Judged(
        facts, exercises.stream().map(it -> facts.candidate(it.id()).orElseThrow()).toList());
  }

  /** Another session of the same problem and length. */
  Judged with(List<Candidate> others) {
    return new Judged(facts, others);
  }

  List<Exercise> exercises() {
    return places.stream().map(Candidate::exercise).toList();
  }

  /** Whether the place belongs to a superset of one exercise on both sides. */
  boolean isOneSided(int place) {
    return places.get(place).unilateral();
  }

  /** The exercises, both sides of one once. */
  List<Candidate> distinct() {
    return places.stream().distinct().toList();
  }

  List<Ledger.Entry> matches() {
    Lineup lineup = Lineup.empty(facts);
    Candidate[] own = places.toArray(Candidate[]::new);
    System.arraycopy(own, 0, lineup.places(), 0, own.length);
    return Ledger.of(lineup);
  }

  /** Points by constraint, ratings left out. */
  Points points() {
    int[] sums = new int[Level.values().length];
    Map<String, Integer> by = new TreeMap<>();
    for (Ledger.Entry entry : matches()) {
      if (!RATINGS.contains(entry.constraint().id())) {
        sums[entry.constraint().level().ordinal()] += entry.points();
        by.merge(entry.constraint().id(), entry.points(), Integer::sum);
      }
    }
    return new Points(sums, by);
  }

  /** Points by level, the highest first, and by constraint. */
  record Points(int[] levels, Map<String, Integer> by) implements Comparable<Points> {

    @Override
    public int compareTo(Points other) {
      return Arrays.compare(levels, other.levels);
    }

    /** The same, rules set aside. */
    Points withoutRules() {
      int[] others = levels.clone();
      others[Level.HARD.ordinal()] = 0;
      return new Points(others, by);
    }

    int of(String constraint) {
      return by.getOrDefault(constraint, 0);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Points points && by.equals(points.by);
    }

    @Override
    public int hashCode() {
      return Objects.hash(by);
    }
  }
}
