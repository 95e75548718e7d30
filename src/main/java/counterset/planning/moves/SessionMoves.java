package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.scoring.SearchScore;
import java.util.Collections;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Random;

/**
 * Makes the random moves of the search. The shares of the kinds of move were chosen by measuring.
 */
public final class SessionMoves implements MoveIteratorFactory<SessionSolution, FillMove> {

  /** Tries to find a promising move before another one has to do. */
  private static final int MOST_TRIES = 1_000;

  // Kept from step to step, each of which asks for an iterator of its own.
  private SessionFacts facts;
  private Pool pool;
  private boolean movable;
  private Screen screen;

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
      screen = new Screen(new SearchScore(facts), solution.getPlaces().size());
      movable =
          solution.getPlaces().stream().anyMatch(place -> !place.isPinned())
              && !facts.candidates().isEmpty();
    }
    if (!movable) {
      return Collections.emptyIterator();
    }
    screen.look(solution.getPlaces());
    return new Moves(new Lineup(solution), pool, screen, random);
  }

  private static final class Moves implements Iterator<FillMove> {

    private final Random random;
    private final Screen screen;
    private final Refills refills;
    private final Reorders reorders;
    private FillMove next;

    Moves(Lineup lineup, Pool pool, Screen screen, Random random) {
      this.random = random;
      this.screen = screen;
      this.refills = new Refills(lineup, pool, random);
      this.reorders = new Reorders(lineup, random);
    }

    /**
     * Looks ahead, since there may be no move left: nearly all may be pinned, or no other exercise
     * may fit.
     */
    @Override
    public boolean hasNext() {
      if (next == null) {
        next = find();
      }
      return next != null;
    }

    @Override
    public FillMove next() {
      if (!hasNext()) {
        throw new NoSuchElementException("No move can be made.");
      }
      FillMove move = next;
      next = null;
      return move;
    }

    private FillMove find() {
      FillMove last = null;
      for (int i = 0; i < MOST_TRIES; i++) {
        FillMove move = make(random.nextInt(100));
        if (move != null && screen.isPromising(move)) {
          return move;
        }
        last = move == null ? last : move;
      }
      return last;
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
