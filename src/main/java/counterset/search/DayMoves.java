package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;
import java.util.Optional;

/** Makes up changes of one session of a draft: of its exercises, and of its stand-ins. */
final class DayMoves {

  /** The share of the changes of one modification only, where there are tracks. */
  private static final int RECAST_PERCENT = 5;

  private final Dice dice;
  private final Board board;
  private final Proposals proposals;
  private final Change change;
  // Null where any session may be entered.
  private final Fence fence;
  // Null where there are no tracks.
  private final Cast cast;
  private final Ranking ranking;
  private final Candidate[] before;
  private final Candidate[] standIns;
  private final Candidate[] tried;

  DayMoves(Task.Day day, Optional<Fence> fence, Dice dice) {
    SessionFacts facts = day.from().facts();
    this.dice = dice;
    this.fence = fence.orElse(null);
    board = new Board(facts, day.pinned());
    proposals = new Proposals(board, Pool.of(facts), dice, this.fence);
    change = new Change(board.size());
    ranking = facts.tracks() == 0 ? null : new Ranking(facts);
    cast = facts.tracks() == 0 ? null : new Cast(facts, ranking);
    before = new Candidate[board.size()];
    standIns = new Candidate[day.from().standIns().length];
    tried = new Candidate[standIns.length];
  }

  /** How many spots it has. */
  int size() {
    return board.size() + standIns.length;
  }

  /** Takes over what stands in its spots, beginning with one. */
  void look(Spot[] spots, int offset) {
    for (int place = 0; place < board.size(); place++) {
      board.put(place, spots[offset + place].getCandidate());
    }
    for (int standIn = 0; standIn < standIns.length; standIn++) {
      standIns[standIn] = spots[offset + board.size() + standIn].getCandidate();
    }
  }

  /**
   * Makes up a change.
   *
   * @param changes takes in what changes
   * @return whether the one drawn can be made
   */
  boolean propose(SpotChanges changes) {
    if (cast != null && dice.nextInt(100) < RECAST_PERCENT) {
      return recast(changes);
    }
    if (!proposals.next(change)) {
      return false;
    }
    System.arraycopy(board.candidates(), 0, before, 0, before.length);
    board.make(change);
    boolean admitted = fence == null || fence.admits(board.candidates());
    if (admitted) {
      for (int i = 0; i < change.size(); i++) {
        int place = change.place(i);
        if (board.at(place) != before[place]) {
          changes.add(place, board.at(place));
        }
      }
      recastAll(changes);
    }
    board.make(change);
    return admitted && changes.size() > 0;
  }

  /** The stand-ins that the changed session asks for. */
  private void recastAll(SpotChanges changes) {
    if (cast != null) {
      cast.choose(before, standIns, board.candidates(), tried);
      for (int standIn = 0; standIn < standIns.length; standIn++) {
        if (tried[standIn] != standIns[standIn]) {
          changes.add(board.size() + standIn, tried[standIn]);
        }
      }
    }
  }

  private boolean recast(SpotChanges changes) {
    int standIn = dice.nextInt(standIns.length);
    Candidate other =
        standIns[standIn] == null ? null : Recasts.any(board, ranking, standIns, standIn, dice);
    if (other == null || other == standIns[standIn]) {
      return false;
    }
    changes.add(board.size() + standIn, other);
    return true;
  }
}
