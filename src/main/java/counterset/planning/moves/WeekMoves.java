package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import counterset.planning.SessionSolution;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;

/**
 * The moves of the search for a week. Each is the best point of a {@link WeekWalk} from the working
 * solution: a hot one from an empty week, cooler ones from one that is filled.
 */
public final class WeekMoves implements MoveIteratorFactory<WeekSolution, WeekFillMove> {

  // Points lost in one try, on average, when a walk begins and when it ends.
  private static final double EMPTY_START = 5;
  private static final double FILLED_START = 3;
  private static final double END = 0.7;

  // Kept from step to step, each of which asks for an iterator of its own.
  private WeekFacts facts;
  private DayTools[] tools;

  /** How many tries a walk has: as many as the walks of the sessions that can change together. */
  public static int tries(List<SessionSolution> sessions) {
    return sessions.stream()
        .filter(DayTools::isMovable)
        .mapToInt(session -> SessionMoves.tries(session.getFacts().supersets()))
        .sum();
  }

  @Override
  public long getSize(ScoreDirector<WeekSolution> director) {
    return 1;
  }

  @Override
  public Iterator<WeekFillMove> createOriginalMoveIterator(ScoreDirector<WeekSolution> director) {
    throw new IllegalStateException("The moves of a week can only be made in random order.");
  }

  @Override
  public Iterator<WeekFillMove> createRandomMoveIterator(
      ScoreDirector<WeekSolution> director, Random random) {
    WeekSolution solution = director.getWorkingSolution();
    if (solution.getFacts() != facts) {
      facts = solution.getFacts();
      tools = DayTools.of(facts);
    }
    int tries = tries(sessions(solution));
    return tries == 0 ? Collections.emptyIterator() : new Walks(solution, random, tries);
  }

  private static List<SessionSolution> sessions(WeekSolution week) {
    return week.getFacts().days().stream()
        .map((WeekDay day) -> WeekSolutions.session(week, day))
        .toList();
  }

  private final class Walks implements Iterator<WeekFillMove> {

    private final WeekSolution solution;
    private final Random random;
    private final int tries;

    private Walks(WeekSolution solution, Random random, int tries) {
      this.solution = solution;
      this.random = random;
      this.tries = tries;
    }

    @Override
    public boolean hasNext() {
      return true;
    }

    @Override
    public WeekFillMove next() {
      WeekWalk walk = new WeekWalk(solution, tools, new Dice(random.nextLong()));
      boolean filled =
          solution.getPlaces().stream()
              .anyMatch(place -> !place.isPinned() && place.getCandidate() != null);
      walk.go(new Temperature(filled ? FILLED_START : EMPTY_START, END, tries), tries);
      return new WeekFillMove(solution, walk);
    }
  }
}
