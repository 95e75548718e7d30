package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import java.util.random.RandomGenerator;

/** Moves that bring other exercises in. Each returns null where it cannot be made. */
final class Refills {

  private static final int LONGEST_RUN = 3;
  private static final int NEARBY_PERCENT = Integer.getInteger("nearby", 70);

  private final Lineup lineup;
  private final Pool pool;
  private final RandomGenerator random;

  Refills(Lineup lineup, Pool pool, RandomGenerator random) {
    this.lineup = lineup;
    this.pool = pool;
    this.random = random;
  }

  /** Another exercise in one place, where its superset holds single exercises; else a new superset. */
  FillMove onePlace() {
    int index = random.nextInt(lineup.size());
    Place place = lineup.place(index);
    if (place.isPinned() || !pool.all().hasSingle()) {
      return null;
    }
    int superset = place.getSuperset();
    for (Candidate candidate : lineup.contents(superset)) {
      if (candidate == null && lineup.isFree(superset, superset) || candidate != null && candidate.unilateral()) {
        return superset(superset);
      }
    }
    Pool.Choice choice = choiceNear(index);
    return choice.hasSingle() ? new FillMove(new Place[] {place}, new Candidate[] {choice.single(random)}) : null;
  }

  /** Mostly the kind of a place or of one beside it, since a change of equipment costs most; else all candidates. */
  private Pool.Choice choiceNear(int index) {
    int near = index + random.nextInt(5) - 2;
    if (near < 0 || near >= lineup.size() || random.nextInt(100) >= NEARBY_PERCENT) {
      return pool.all();
    }
    Candidate neighbour = lineup.place(near).getCandidate();
    return neighbour == null ? pool.all() : pool.kindOf(neighbour);
  }

  /** A whole superset anew. */
  FillMove oneSuperset() {
    return superset(random.nextInt(lineup.supersets()));
  }

  private FillMove superset(int superset) {
    Candidate[] contents = choiceNear(superset * lineup.perSuperset()).contents(lineup.perSuperset(), random);
    return contents == null || !lineup.isFree(superset, superset) ? null : lineup.fill(superset, contents);
  }

  /** One to three neighbouring supersets anew with one kind of equipment on one level, which single changes do not reach. */
  FillMove runOfOneKind() {
    int length = 1 + random.nextInt(Math.min(LONGEST_RUN, lineup.supersets()));
    int first = random.nextInt(lineup.supersets() - length + 1);
    if (!lineup.isFree(first, first + length - 1)) {
      return null;
    }
    Pool.Choice kind = pool.anyKind(random);
    Candidate[][] contents = new Candidate[length][];
    for (int i = 0; i < length; i++) {
      contents[i] = kind.contents(lineup.perSuperset(), random);
      if (contents[i] == null) {
        return null;
      }
    }
    return lineup.fill(first, contents);
  }
}
