package counterset.planning.moves;

import counterset.planning.Candidate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** What moves may choose from: all candidates, and those of one kind of equipment on one level (floor or not). */
final class Pool {

  private final Choice all;
  private final List<Choice> kinds;
  private final Choice[] kindOf;

  Pool(List<Candidate> candidates) {
    all = new Choice(candidates);
    Map<Kind, List<Candidate>> byKind = new LinkedHashMap<>();
    for (Candidate candidate : candidates) {
      Kind kind = new Kind(candidate.handling().needs(), candidate.floor());
      byKind.computeIfAbsent(kind, key -> new ArrayList<>()).add(candidate);
    }
    kinds = byKind.values().stream().map(Choice::new).toList();
    kindOf = new Choice[candidates.size()];
    Iterator<Choice> choices = kinds.iterator();
    for (List<Candidate> alike : byKind.values()) {
      Choice kind = choices.next();
      alike.forEach(candidate -> kindOf[candidate.index()] = kind);
    }
  }

  Choice all() {
    return all;
  }

  Choice anyKind(RandomGenerator random) {
    return kinds.get(random.nextInt(kinds.size()));
  }

  /** The candidates of the same kind as one of them. */
  Choice kindOf(Candidate candidate) {
    return kindOf[candidate.index()];
  }

  private record Kind(long needs, boolean floor) {}

  /** Candidates to choose from at random, those that stand alone apart from those that fill a superset by themselves. */
  static final class Choice {

    private final Candidate[] single;
    private final Candidate[] unilateral;

    private Choice(List<Candidate> candidates) {
      single = candidates.stream().filter(candidate -> !candidate.unilateral()).toArray(Candidate[]::new);
      unilateral = candidates.stream().filter(Candidate::unilateral).toArray(Candidate[]::new);
    }

    boolean hasSingle() {
      return single.length > 0;
    }

    Candidate single(RandomGenerator random) {
      return single[random.nextInt(single.length)];
    }

    /** Contents for a superset of so many positions; null if these candidates cannot fill one. */
    Candidate[] contents(int positions, RandomGenerator random) {
      boolean canPair = single.length >= positions;
      boolean canSplit = unilateral.length > 0 && positions == 2;
      if (!canPair && !canSplit) {
        return null;
      }
      Candidate[] contents = new Candidate[positions];
      if (canSplit && (!canPair || random.nextInt(3) == 0)) {
        contents[0] = unilateral[random.nextInt(unilateral.length)];
        contents[1] = contents[0];
      } else {
        for (int i = 0; i < positions; i++) {
          contents[i] = single(random);
        }
      }
      return contents;
    }
  }
}
