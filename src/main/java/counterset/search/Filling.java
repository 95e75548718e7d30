package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.Change;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tries out what may fill a vacancy: one-sided exercises, or those for both sides at once. */
final class Filling {

  private final Vacancy vacancy;
  private final boolean oneSided;
  private final Set<At> gaps;
  private final Exchange exchange;
  private final List<Candidate> usable;
  private final Change change;

  /**
   * Fillings of one kind.
   *
   * @param usable what may be put in
   * @param oneSided whether they take both places of the superset
   */
  Filling(
      Problem problem,
      Catalogue catalogue,
      List<Exercise> usable,
      Vacancy vacancy,
      boolean oneSided) {
    this.vacancy = vacancy;
    this.oneSided = oneSided;
    this.gaps = vacancy.places(oneSided);
    this.exchange = new Exchange(problem, catalogue, usable, vacancy.session(), gaps);
    this.usable = usable.stream().map(exchange::of).toList();
    this.change = new Change(exchange.places());
  }

  /** What the session becomes with an exercise; empty if it is in it, or finds no partner. */
  Optional<Replacement> with(Exercise exercise) {
    Candidate candidate = exchange.of(exercise);
    if (exchange.holds(candidate)) {
      return Optional.empty();
    }
    if (oneSided || gaps.size() == 1) {
      fill(candidate, candidate);
      return Optional.of(replacement(candidate, Optional.empty()));
    }
    Optional<Candidate> partner = partner(candidate);
    partner.ifPresent(other -> fill(candidate, other));
    return partner.map(other -> replacement(candidate, partner));
  }

  /** The best for the other place, of equals the first by id. */
  private Optional<Candidate> partner(Candidate candidate) {
    Candidate best = null;
    Worth bestWorth = null;
    for (Candidate other : usable) {
      if (vacancy.fillsBoth(other.exercise())
          || other.root() == candidate.root()
          || exchange.holds(other)) {
        continue;
      }
      fill(candidate, other);
      // Followers only take points away.
      if (best == null || exchange.atMost(change).compareTo(bestWorth) >= 0) {
        Worth worth = exchange.worth(change);
        int order = best == null ? 1 : worth.compareTo(bestWorth);
        if (order > 0 || order == 0 && isBefore(other, best)) {
          best = other;
          bestWorth = worth;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean isBefore(Candidate one, Candidate other) {
    return one.exercise().id().compareTo(other.exercise().id()) < 0;
  }

  private void fill(Candidate candidate, Candidate other) {
    change.clear(false);
    for (At gap : gaps) {
      change.put(exchange.place(gap), gap.equals(vacancy.at()) ? candidate : other);
    }
  }

  private Replacement replacement(Candidate candidate, Optional<Candidate> partner) {
    Worth worth = exchange.settle(change);
    return new Replacement(
        candidate.exercise(),
        List.copyOf(gaps),
        partner.map(Candidate::exercise),
        exchange.session(),
        worth.hard(),
        worth.medium(),
        worth.soft());
  }
}
