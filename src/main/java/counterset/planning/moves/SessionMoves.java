package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import java.util.Collections;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Random;

/**
 * Makes the random moves of the search. The shares of the kinds of move were chosen by measuring.
 */
public final class SessionMoves implements MoveIteratorFactory<SessionSolution, FillMove> {

  /**
   * Tries before a solution is taken to allow no further move, as when nearly everything is pinned.
   */
  private static final int MOST_TRIES = 1_000;

  // Kept from step to step, each of which asks for an iterator of its own.
  private SessionFacts facts;
  private Pool pool;
  private boolean movable;

  @Override
  public long getSize(ScoreDirector<SessionSolution> director) {
    SessionSolution solution = director.getWorkingSolution();
    return (long) solution.getPlaces().size() * solution.getFacts().candidates().size();
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
      pool = new Pool(facts);
      movable =
          solution.getPlaces().stream().anyMatch(place -> !place.isPinned())
              && !facts.candidates().isEmpty();
    }
    return movable ? new Moves(new Lineup(solution), pool, random) : Collections.emptyIterator();
  }

  private static final class Moves implements Iterator<FillMove> {

    private final Random random;
    private final Refills refills;
    private final Reorders reorders;

    Moves(Lineup lineup, Pool pool, Random random) {
      this.random = random;
      this.refills = new Refills(lineup, pool, random);
      this.reorders = new Reorders(lineup, random);
    }

    @Override
    public boolean hasNext() {
      return true;
    }

    @Override
    public FillMove next() {
      for (int i = 0; i < MOST_TRIES; i++) {
        FillMove move = make(random.nextInt(100));
        if (move != null) {
          return move;
        }
      }
      throw new NoSuchElementException("No move can be made.");
    }

    private FillMove make(int kind) {
      if (kind < 40) {
        return refills.onePlace();
      } else if (kind < 58) {
        return refills.oneSuperset();
      } else if (kind < 66) {
        return refills.runOfOneKind();
      } else if (kind < 80) {
        return reorders.swapPlaces();
      } else if (kind < 88) {
        return reorders.swapSupersets();
      } else if (kind < 95) {
        return reorders.reverseRun();
      }
      return reorders.moveRun();
    }
  }
}
