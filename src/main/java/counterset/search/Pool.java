package counterset.search;

import counterset.score.Candidate;
import counterset.score.PairWorth;
import counterset.score.SessionFacts;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What moves may choose from: all candidates, those of one kind, and those that can follow another
 * without a rest. Shared by all searches of a problem; two that ask for the same list at once may
 * both make it, which does no harm.
 */
final class Pool {

  private final SessionFacts facts;
  private final Choice all;
  private final PairWorth worth;
  private final List<Choice> kinds;
  private final Choice[] kindOf;
  private final Choice[] partners;

  /** The pool of a problem, the same for all searches. */
  static Pool of(SessionFacts facts) {
    return facts.workedOut(Pool.class, Pool::new);
  }

  private Pool(SessionFacts facts) {
    this.facts = facts;
    worth = new PairWorth(facts);
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
  Choice anyKind(Dice dice) {
    return kinds.get(dice.nextInt(kinds.size()));
  }

  /** The candidates of the same kind as one of them. */
  Choice kindOf(Candidate candidate) {
    return kindOf[candidate.index()];
  }

  /**
   * The candidates that can follow one inside a superset, as far as its own equipment goes, the
   * best first.
   */
  Choice partners(Candidate candidate) {
    Choice choice = partners[candidate.index()];
    if (choice == null) {
      int room = Kit.roomInside(facts.clock());
      long inUse = candidate.handling().needs();
      Candidate[] able = new Candidate[all.single.length];
      int[] worths = new int[able.length];
      int count = 0;
      for (Candidate other : all.single) {
        boolean fits = facts.kit().seconds(inUse, candidate.handling(), other.handling()) <= room;
        if (fits && other.root() != candidate.root()) {
          worths[count] = worth.of(candidate, other);
          able[count++] = other;
        }
      }
      choice = new Choice(BestFirst.of(able, worths, count));
      partners[candidate.index()] = choice;
    }
    return choice;
  }

  /**
   * Fills a superset with a choice of one, and what can follow it; false if these candidates cannot
   * fill one.
   */
  boolean fill(Candidate[] contents, Choice choice, Dice dice) {
    boolean canSplit = choice.unilateral.length > 0 && contents.length == 2;
    if (canSplit && (choice.single.length == 0 || dice.nextInt(3) == 0)) {
      contents[0] = choice.unilateral[dice.nextInt(choice.unilateral.length)];
      contents[1] = contents[0];
      return true;
    }
    if (choice.single.length == 0) {
      return false;
    }
    contents[0] = choice.single(dice);
    for (int i = 1; i < contents.length; i++) {
      Choice next = partners(contents[i - 1]);
      contents[i] = next.hasSingle() ? next.single(dice) : all.single(dice);
    }
    return true;
  }

  private record Kind(long needs, boolean floor) {}

  /**
   * Candidates to choose from at random, those that stand alone apart from those that fill a
   * superset by themselves.
   */
  static final class Choice {

    private final Candidate[] single;
    private final Candidate[] unilateral;
    private final boolean bestFirst;

    private Choice(List<Candidate> candidates) {
      bestFirst = false;
      single =
          candidates.stream()
              .filter(candidate -> !candidate.unilateral())
              .toArray(Candidate[]::new);
      unilateral = candidates.stream().filter(Candidate::unilateral).toArray(Candidate[]::new);
    }

    /** Of candidates that stand alone, the best first. */
    private Choice(Candidate[] bestFirst) {
      this.bestFirst = true;
      single = bestFirst;
      unilateral = new Candidate[0];
    }

    /** Those that stand alone, in order; to be read only. */
    Candidate[] singles() {
      return single;
    }

    boolean hasSingle() {
      return single.length > 0;
    }

    /**
     * One of those that stand alone; where the best come first, the first tenth comes up one time
     * in three.
     */
    Candidate single(Dice dice) {
      int index = dice.nextInt(single.length);
      return single[bestFirst ? index * dice.nextInt(single.length) / single.length : index];
    }
  }
}
