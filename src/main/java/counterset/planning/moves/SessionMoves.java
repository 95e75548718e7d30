package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import counterset.planning.Ranking;
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

  /** The share of the moves that only change a modification, where there are tracks. */
  private static final int RECAST_PERCENT = 5;

  // Kept from step to step, each of which asks for an iterator of its own.
  private SessionFacts facts;
  private Pool pool;
  private boolean movable;
  private Screen screen;
  private Ranking ranking;

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
      boolean tracks = facts.tracks() > 0;
      ranking = tracks ? new Ranking(facts) : null;
      screen =
          new Screen(
              new SearchScore(facts),
              solution.getPlaces().size(),
              tracks ? new TrackScreen(facts, ranking) : null);
      movable =
          (tracks || solution.getPlaces().stream().anyMatch(place -> !place.isPinned()))
              && !solution.getPlaces().isEmpty()
              && !facts.candidates().isEmpty();
    }
    if (!movable) {
      return Collections.emptyIterator();
    }
    screen.look(solution);
    Recasts recasts = ranking == null ? null : new Recasts(solution, ranking, random);
    return new Moves(new Lineup(solution), pool, screen, recasts, random);
  }

  private static final class Moves implements Iterator<FillMove> {

    private final Random random;
    private final Screen screen;
    private final Refills refills;
    private final Reorders reorders;
    private final Recasts recasts;
    private FillMove next;

    Moves(Lineup lineup, Pool pool, Screen screen, Recasts recasts, Random random) {
      this.random = random;
      this.screen = screen;
      this.refills = new Refills(lineup, pool, random);
      this.reorders = new Reorders(lineup, random);
      this.recasts = recasts;
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
        boolean recast = recasts != null && random.nextInt(100) < RECAST_PERCENT;
        FillMove move = recast ? recasts.one() : make(random.nextInt(100));
        FillMove promising = move == null ? null : screen.promising(move);
        if (promising != null) {
          return promising;
        }
        last = move == null ? last : move;
      }
      return last == null ? null : screen.anyway(last);
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
