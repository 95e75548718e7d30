package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import java.util.random.RandomGenerator;

/**
 * Moves that keep the exercises and change their order. Each returns null where it cannot be made.
 */
final class Reorders {

  private final Lineup lineup;
  private final RandomGenerator random;

  Reorders(Lineup lineup, RandomGenerator random) {
    this.lineup = lineup;
    this.random = random;
  }

  /** Two single exercises change places. */
  FillMove swapPlaces() {
    Place first = lineup.place(random.nextInt(lineup.size()));
    Place second = lineup.place(random.nextInt(lineup.size()));
    if (first.isPinned()
        || second.isPinned()
        || !lineup.isSingle(first)
        || !lineup.isSingle(second)) {
      return null;
    }
    return new FillMove(
        new Place[] {first, second}, new Candidate[] {second.getCandidate(), first.getCandidate()});
  }

  /** Two whole supersets change places. */
  FillMove swapSupersets() {
    int first = random.nextInt(lineup.supersets());
    int second = random.nextInt(lineup.supersets());
    if (first == second || !lineup.isFree(first, first) || !lineup.isFree(second, second)) {
      return null;
    }
    Place[] places = new Place[2 * lineup.perSuperset()];
    Candidate[] candidates = new Candidate[places.length];
    for (int position = 0; position < lineup.perSuperset(); position++) {
      places[2 * position] = lineup.place(first * lineup.perSuperset() + position);
      places[2 * position + 1] = lineup.place(second * lineup.perSuperset() + position);
      candidates[2 * position] = places[2 * position + 1].getCandidate();
      candidates[2 * position + 1] = places[2 * position].getCandidate();
    }
    return new FillMove(places, candidates);
  }

  /** A run of supersets backwards; half the time the exercises inside each superset too. */
  FillMove reverseRun() {
    int first = random.nextInt(lineup.supersets());
    int last = first + random.nextInt(lineup.supersets() - first);
    if (!lineup.isFree(first, last)) {
      return null;
    }
    boolean inside = first == last || random.nextBoolean();
    Candidate[][] contents = new Candidate[last - first + 1][];
    for (int i = 0; i < contents.length; i++) {
      Candidate[] old = lineup.contents(last - i);
      contents[i] = inside ? reversed(old) : old;
    }
    return lineup.fill(first, contents);
  }

  /** A run of supersets moves earlier or later: the run and its neighbour run change places. */
  FillMove moveRun() {
    int first = random.nextInt(lineup.supersets());
    int last = first + random.nextInt(lineup.supersets() - first);
    if (first == last || !lineup.isFree(first, last)) {
      return null;
    }
    int length = last - first + 1;
    int shift = 1 + random.nextInt(length - 1);
    Candidate[][] contents = new Candidate[length][];
    for (int i = 0; i < length; i++) {
      contents[i] = lineup.contents(first + (i + shift) % length);
    }
    return lineup.fill(first, contents);
  }

  private static Candidate[] reversed(Candidate[] contents) {
    Candidate[] reversed = new Candidate[contents.length];
    for (int i = 0; i < contents.length; i++) {
      reversed[i] = contents[contents.length - 1 - i];
    }
    return reversed;
  }
}
