package counterset.search;

import counterset.score.Lineup;
import counterset.score.WeekFacts;
import java.util.List;
import java.util.Optional;

/**
 * What a search is to plan.
 *
 * @param days the sessions of a week, or one by itself
 * @param week what the sessions are judged by together; empty for one by itself
 * @param fence which sessions may be entered, of one by itself; empty if all
 * @param mood the seed whose mood it is planned in; {@link Mood#NONE} for none
 */
record Task(List<Day> days, Optional<WeekFacts> week, Optional<Fence> fence, long mood) {

  Task(List<Day> days, Optional<WeekFacts> week, Optional<Fence> fence) {
    this(days, week, fence, Mood.NONE);
  }

  /**
   * A session.
   *
   * @param from what a search begins with
   * @param pinned by place, what stays as it is
   */
  record Day(Lineup from, boolean[] pinned) {

    /** A session of which nothing is there but what the coach keeps, and that stays. */
    static Day empty(Lineup kept) {
      boolean[] pinned = new boolean[kept.places().length];
      for (int place = 0; place < pinned.length; place++) {
        pinned[place] = kept.places()[place] != null;
      }
      return new Day(kept, pinned);
    }

    /** Whether there is anything to decide. */
    boolean isMovable() {
      boolean open = from.standIns().length > 0;
      for (boolean stays : pinned) {
        open |= !stays;
      }
      return open && pinned.length > 0 && !from.facts().candidates().isEmpty();
    }
  }

  /** One session by itself. */
  static Task of(Day day) {
    return new Task(List.of(day), Optional.empty(), Optional.empty());
  }

  /** The same in the mood of a seed. */
  Task inMood(long seed) {
    return new Task(days, week, fence, seed);
  }

  boolean isMovable() {
    return days.stream().anyMatch(Day::isMovable);
  }
}
