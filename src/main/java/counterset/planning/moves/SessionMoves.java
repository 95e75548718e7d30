package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.scoring.SearchScore;
import java.util.Collections;
import java.util.Iterator;
import java.util.Random;

/**
 * The moves of the search. Each is the best point of a {@link Walk} from the working solution: the
 * first one hot, to find the shape of the session, the later ones cooler, to mend it. Before the
 * first comes a survey, hotter still and lax about rules and wishes, since where few sessions meet
 * all of them no way may lead there from a session that nearly does. For the same reason a later
 * walk begins with a detour.
 */
public final class SessionMoves implements MoveIteratorFactory<SessionSolution, FillMove> {

  private static final int TRIES = 32_000;
  private static final int TRIES_PER_SUPERSET = 8_000;
  private static final int FEWEST_SUPERSETS = 8;

  /** The survey has this part of the tries of a walk, and so has a detour. */
  private static final int LAX_PART = 3;

  // Points lost in one try, on average, when a walk begins and when it ends.
  private static final double SURVEY_START = 40;
  private static final double FIRST_START = 5;
  private static final double DETOUR_START = 12;
  private static final double LATER_START = 3;
  private static final double END = 0.7;

  // Kept from step to step, each of which asks for an iterator of its own.
  private SessionFacts facts;
  private Pool pool;
  private SearchScore score;
  private Followers followers;
  private boolean movable;
  private boolean walked;

  /**
   * How many changes are tried. Longer sessions take more, since there is more to decide, but not
   * in proportion, since nobody waits six times as long for an hour as for ten minutes.
   *
   * @param walks at least 1
   * @param supersets of the session
   */
  public static int tries(int walks, int supersets) {
    return walks * tries(supersets) + tries(supersets) / LAX_PART;
  }

  /** How many tries one walk has. */
  static int tries(int supersets) {
    return TRIES + TRIES_PER_SUPERSET * Math.max(FEWEST_SUPERSETS, supersets);
  }

  @Override
  public long getSize(ScoreDirector<SessionSolution> director) {
    return 1;
  }

  @Override
  public Iterator<FillMove> createOriginalMoveIterator(ScoreDirector<SessionSolution> director) {
    throw new IllegalStateException("The moves of a session can only be made in random order.");
  }

  @Override
  public Iterator<FillMove> createRandomMoveIterator(
      ScoreDirector<SessionSolution> director, Random random) {
    SessionSolution solution = director.getWorkingSolution();
    if (solution.getFacts() != facts) {
      facts = solution.getFacts();
      pool = Pool.of(facts);
      score = new SearchScore(facts);
      followers = facts.tracks() > 0 ? new Followers(facts) : null;
      movable =
          (followers != null || solution.getPlaces().stream().anyMatch(place -> !place.isPinned()))
              && !solution.getPlaces().isEmpty()
              && !facts.candidates().isEmpty();
      walked = isFilled(solution);
    }
    return movable ? new Walks(solution, random) : Collections.emptyIterator();
  }

  /** Whether there is something to mend: a session that was given, or that is kept as a whole. */
  private static boolean isFilled(SessionSolution solution) {
    return solution.getPlaces().stream()
        .anyMatch(place -> !place.isPinned() && place.getCandidate() != null);
  }

  private final class Walks implements Iterator<FillMove> {

    private final SessionSolution solution;
    private final Random random;

    private Walks(SessionSolution solution, Random random) {
      this.solution = solution;
      this.random = random;
    }

    @Override
    public boolean hasNext() {
      return true;
    }

    @Override
    public FillMove next() {
      int tries = tries(facts.supersets());
      Walk walk = new Walk(solution, pool, score, followers, new Dice(random.nextLong()));
      int lax = tries / LAX_PART;
      if (walked) {
        walk.go(new Temperature(DETOUR_START, LATER_START, lax), Energy.DETOUR, lax);
        walk.go(new Temperature(LATER_START, END, tries - lax), Energy.STRICT, tries - lax);
      } else {
        walk.go(new Temperature(SURVEY_START, FIRST_START, lax), Energy.SURVEY, lax);
        walk.goBack();
        walk.go(new Temperature(FIRST_START, END, tries), Energy.STRICT, tries);
      }
      walked = true;
      return FillMove.to(solution, walk.bestPlaces(), walk.bestStandIns());
    }
  }
}
