package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * What moves may choose from: all candidates, those of one kind, and those that can follow another
 * without a rest.
 */
final class Pool {

  private final SessionFacts facts;
  private final Choice all;
  private final List<Choice> kinds;
  private final Choice[] kindOf;
  private final Choice[] partners;

  Pool(SessionFacts facts) {
    this.facts = facts;
    List<Candidate> candidates = facts.candidates();
    all = new Choice(candidates);
    Map<Kind, List<Candidate>> byKind = new LinkedHashMap<>();
    for (Candidate candidate : candidates) {
      Kind kind = new Kind(candidate.handling().needs(), candidate.floor());
      byKind.computeIfAbsent(kind, key -> new ArrayList<>()).add(candidate);
    }
    kinds = byKind.values().stream().map(Choice::new).toList();
    kindOf = new Choice[candidates.size()];
    partners = new Choice[candidates.size()];
    Iterator<Choice> choices = kinds.iterator();
    for (List<Candidate> alike : byKind.values()) {
      Choice kind = choices.next();
      alike.forEach(candidate -> kindOf[candidate.index()] = kind);
    }
  }

  Choice all() {
    return all;
  }

  /** Candidates of one kind of equipment on one level (floor or not). */
  Choice anyKind(RandomGenerator random) {
    return kinds.get(random.nextInt(kinds.size()));
  }

  /** The candidates of the same kind as one of them. */
  Choice kindOf(Candidate candidate) {
    return kindOf[candidate.index()];
  }

  /** The candidates that can follow one inside a superset, as far as its own equipment goes. */
  Choice partners(Candidate candidate) {
    Choice choice = partners[candidate.index()];
    if (choice == null) {
      int room = Kit.roomInside(facts.clock());
      long inUse = candidate.handling().needs();
      List<Candidate> able = new ArrayList<>();
      for (Candidate other : all.single) {
        boolean fits = facts.kit().seconds(inUse, candidate.handling(), other.handling()) <= room;
        if (fits && other.root() != candidate.root()) {
          able.add(other);
        }
      }
      choice = new Choice(able);
      partners[candidate.index()] = choice;
    }
    return choice;
  }

  /**
   * Contents for a superset: a choice of one, and what can follow it; null if these candidates
   * cannot fill one.
   */
  Candidate[] contents(Choice choice, int positions, RandomGenerator random) {
    boolean canSplit = choice.unilateral.length > 0 && positions == 2;
    if (canSplit && (choice.single.length == 0 || random.nextInt(3) == 0)) {
      Candidate both = choice.unilateral[random.nextInt(choice.unilateral.length)];
      return new Candidate[] {both, both};
    }
    if (choice.single.length == 0) {
      return null;
    }
    Candidate[] contents = new Candidate[positions];
    contents[0] = choice.single(random);
    for (int i = 1; i < positions; i++) {
      Choice next = partners(contents[i - 1]);
      contents[i] = next.hasSingle() ? next.single(random) : all.single(random);
    }
    return contents;
  }

  private record Kind(long needs, boolean floor) {}

  /**
   * Candidates to choose from at random, those that stand alone apart from those that fill a
   * superset by themselves.
   */
  static final class Choice {

    private final Candidate[] single;
    private final Candidate[] unilateral;

    private Choice(List<Candidate> candidates) {
      single =
          candidates.stream()
              .filter(candidate -> !candidate.unilateral())
              .toArray(Candidate[]::new);
      unilateral = candidates.stream().filter(Candidate::unilateral).toArray(Candidate[]::new);
    }

    boolean hasSingle() {
      return single.length > 0;
    }

    Candidate single(RandomGenerator random) {
      return single[random.nextInt(single.length)];
    }
  }
}
