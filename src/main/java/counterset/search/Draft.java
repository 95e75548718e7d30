package counterset.search;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.cloner.SolutionCloner;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.score.Candidate;
import counterset.score.Lineup;
import java.util.ArrayList;
import java.util.List;

/** The sessions that are being planned: those of a week, or one by itself. */
@PlanningSolution(solutionCloner = Draft.Cloner.class)
public class Draft {

  private Task task;
  @PlanningEntityCollectionProperty private List<Spot> spots;
  @PlanningScore private HardMediumSoftScore score;

  /** For the solver, which clones drafts. */
  public Draft() {}

  private Draft(Task task, List<Spot> spots, HardMediumSoftScore score) {
    this.task = task;
    this.spots = spots;
    this.score = score;
  }

  /** The draft that a search begins with. */
  static Draft of(Task task) {
    List<Spot> spots = new ArrayList<>();
    for (int day = 0; day < task.days().size(); day++) {
      Lineup lineup = task.days().get(day).from();
      boolean[] pinned = task.days().get(day).pinned();
      int places = lineup.places().length;
      for (int index = 0; index < places + lineup.standIns().length; index++) {
        boolean main = index < places;
        Candidate candidate = main ? lineup.places()[index] : lineup.standIns()[index - places];
        boolean fixed = main && pinned[index];
        spots.add(new Spot(spots.size(), day, index, lineup.facts(), fixed, candidate));
      }
    }
    return new Draft(task, spots, null);
  }

  /** What is to be planned. */
  public Task getTask() {
    return task;
  }

  /** Session by session: its places in order, then its stand-ins track by track. */
  public List<Spot> getSpots() {
    return spots;
  }

  public HardMediumSoftScore getScore() {
    return score;
  }

  public void setScore(HardMediumSoftScore score) {
    this.score = score;
  }

  /** The sessions as they are. */
  List<Lineup> lineups() {
    List<Lineup> lineups = new ArrayList<>();
    int number = 0;
    for (Task.Day day : task.days()) {
      Lineup lineup = day.from().copy();
      for (int place = 0; place < lineup.places().length; place++) {
        lineup.places()[place] = spots.get(number++).getCandidate();
      }
      for (int standIn = 0; standIn < lineup.standIns().length; standIn++) {
        lineup.standIns()[standIn] = spots.get(number++).getCandidate();
      }
      lineups.add(lineup);
    }
    return lineups;
  }

  /** Copies what the solver changes, without reflection: it does so at every better draft. */
  public static final class Cloner implements SolutionCloner<Draft> {

    @Override
    public Draft cloneSolution(Draft draft) {
      List<Spot> spots = new ArrayList<>(draft.spots.size());
      draft.spots.forEach(spot -> spots.add(spot.copy()));
      return new Draft(draft.task, spots, draft.score);
    }
  }
}
