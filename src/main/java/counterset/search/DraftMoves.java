package counterset.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import ai.timefold.solver.core.impl.score.director.InnerScoreDirector;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import counterset.score.Candidate;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * The moves of the search: small changes of one session of a draft, drawn at random without end.
 *
 * <p>The only class that crosses into the inside of Timefold: its public ways to make moves choose
 * entity by entity, while a change here must look at the session around it.
 */
public final class DraftMoves implements MoveIteratorFactory<Draft, DraftMove> {

  /** Draws that come to nothing before a session is taken for one that nothing can change. */
  private static final int MOST_DRAWS = 20_000;

  private Draft draft;
  private Task task;
  private Spot[] spots;
  private DayMoves[] days;
  private int[] offsets;
  private int[] movable;
  private SpotChanges changes;
  private Dice dice;
  private PlanningVariableMetaModel<Draft, Spot, Candidate> variable;
  private final Moves moves = new Moves();

  @Override
  public long getSize(ScoreDirector<Draft> director) {
    return director.getWorkingSolution().getSpots().size();
  }

  @Override
  public Iterator<DraftMove> createOriginalMoveIterator(ScoreDirector<Draft> director) {
    throw new IllegalStateException("The moves of a draft can only be made in random order.");
  }

  /** Asked for at every step, so it only looks at what stands where. */
  @Override
  public Iterator<DraftMove> createRandomMoveIterator(
      ScoreDirector<Draft> director, Random random) {
    if (director.getWorkingSolution() != draft) {
      begin(director, random);
    }
    if (movable.length == 0) {
      return Collections.emptyIterator();
    }
    for (int day : movable) {
      days[day].look(spots, offsets[day]);
    }
    moves.next = null;
    return moves;
  }

  private void begin(ScoreDirector<Draft> director, Random random) {
    draft = director.getWorkingSolution();
    spots = draft.getSpots().toArray(Spot[]::new);
    if (task == draft.getTask()) {
      return;
    }
    task = draft.getTask();
    dice = new Dice(random.nextLong());
    variable =
        ((InnerScoreDirector<Draft, ?>) director)
            .getSolutionDescriptor()
            .getMetaModel()
            .genuineEntity(Spot.class)
            .basicVariable("candidate", Candidate.class);
    List<Task.Day> all = task.days();
    days = new DayMoves[all.size()];
    offsets = new int[days.length];
    int offset = 0;
    int most = 0;
    for (int day = 0; day < days.length; day++) {
      days[day] = new DayMoves(all.get(day), task.fence(), dice);
      offsets[day] = offset;
      offset += days[day].size();
      most = Math.max(most, days[day].size());
    }
    movable = IntStream.range(0, days.length).filter(day -> all.get(day).isMovable()).toArray();
    changes = new SpotChanges(most);
  }

  private final class Moves implements Iterator<DraftMove> {

    private DraftMove next;

    @Override
    public boolean hasNext() {
      for (int i = 0; next == null && i < MOST_DRAWS; i++) {
        int day = movable.length == 1 ? movable[0] : movable[dice.nextInt(movable.length)];
        changes.clear();
        if (days[day].propose(changes)) {
          next = changes.move(variable, spots, offsets[day]);
        }
      }
      return next != null;
    }

    @Override
    public DraftMove next() {
      if (!hasNext()) {
        throw new NoSuchElementException("No change of the draft can be made.");
      }
      DraftMove move = next;
      next = null;
      return move;
    }
  }
}
