package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import java.util.random.RandomGenerator;

/** Moves that bring other exercises in. Each returns null where it cannot be made. */
final class Refills {

  private static final int LONGEST_RUN = 3;
  private static final int MOST_TRIES = 12;
  private static final int NEARBY_PERCENT = 70;
  private static final int PARTNER_PERCENT = 90;

  private final Lineup lineup;
  private final Pool pool;
  private final RandomGenerator random;

  Refills(Lineup lineup, Pool pool, RandomGenerator random) {
    this.lineup = lineup;
    this.pool = pool;
    this.random = random;
  }

  /**
   * Another exercise in one place, where its superset holds single exercises; else a new superset.
   */
  FillMove onePlace() {
    int index = random.nextInt(lineup.size());
    Place place = lineup.place(index);
    if (place.isPinned()) {
      return null;
    }
    int superset = place.getSuperset();
    for (Candidate candidate : lineup.contents(superset)) {
      if (candidate == null && lineup.isFree(superset, superset)
          || candidate != null && candidate.unilateral()) {
        return superset(superset);
      }
    }
    Pool.Choice choice = choiceForPlace(index);
    if (!choice.hasSingle()) {
      return null;
    }
    Candidate candidate = replacement(choice, place.getCandidate());
    return lineup.hasRoot(candidate.root(), superset, superset, index)
        ? null
        : new FillMove(new Place[] {place}, new Candidate[] {candidate});
  }

  /**
   * Half the time one that trains the same muscle first, if it is found soon: targets are seldom
   * covered twice over.
   */
  private Candidate replacement(Pool.Choice choice, Candidate old) {
    Candidate candidate = choice.single(random);
    if (old != null && random.nextBoolean()) {
      for (int i = 0; i < MOST_TRIES && (candidate.primary() & old.primary()) == 0; i++) {
        candidate = choice.single(random);
      }
    }
    return candidate;
  }

  /** Mostly what can follow the exercise beside it without a rest; else what is near. */
  private Pool.Choice choiceForPlace(int index) {
    int perSuperset = lineup.perSuperset();
    int beside = index % perSuperset > 0 ? index - 1 : index + 1;
    Candidate other = perSuperset == 1 ? null : lineup.place(beside).getCandidate();
    return other == null
            || !pool.partners(other).hasSingle()
            || random.nextInt(100) >= PARTNER_PERCENT
        ? choiceNear(index)
        : pool.partners(other);
  }

  /**
   * Mostly the kind of a place or of one beside it, since a change of equipment costs most; else
   * all candidates.
   */
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
    if (!lineup.isFree(superset, superset)) {
      return null;
    }
    Pool.Choice near = choiceNear(superset * lineup.perSuperset());
    Candidate[] contents = pool.contents(near, lineup.perSuperset(), random);
    return contents == null || repeats(contents, superset, superset)
        ? null
        : lineup.fill(superset, contents);
  }

  /**
   * One to three neighbouring supersets anew with one kind of equipment on one level, which single
   * changes do not reach.
   */
  FillMove runOfOneKind() {
    int length = 1 + random.nextInt(Math.min(LONGEST_RUN, lineup.supersets()));
    int first = random.nextInt(lineup.supersets() - length + 1);
    if (!lineup.isFree(first, first + length - 1)) {
      return null;
    }
    Pool.Choice kind = pool.anyKind(random);
    Candidate[][] contents = new Candidate[length][];
    for (int i = 0; i < length; i++) {
      contents[i] = pool.contents(kind, lineup.perSuperset(), random);
      if (contents[i] == null || repeats(contents[i], first, first + length - 1)) {
        return null;
      }
    }
    return lineup.fill(first, contents);
  }

  /**
   * Whether contents hold an exercise that stands outside the supersets to be filled: no use in
   * trying that.
   */
  private boolean repeats(Candidate[] contents, int first, int last) {
    for (Candidate candidate : contents) {
      if (lineup.hasRoot(candidate.root(), first, last, -1)) {
        return true;
      }
    }
    return false;
  }
}
