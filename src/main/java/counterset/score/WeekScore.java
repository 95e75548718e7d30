package counterset.score;

import java.util.List;

/**
 * What the constraints between the sessions of a week add to the scores of the sessions. It follows
 * the week exercise by exercise, so a small change costs little. An instance serves one thread.
 */
public final class WeekScore {

  private final List<WeekCounts> counts;
  private final int[] perSuperset;
  private final Sums sums = new Sums();

  /** A week with nothing in its sessions. */
  public WeekScore(WeekFacts facts) {
    counts =
        Constraints.OF_WEEKS.stream()
            .map(constraint -> new WeekCounts(constraint, facts))
            .filter(count -> count.rule.perUnit() != 0)
            .toList();
    perSuperset = facts.days().stream().mapToInt(day -> day.facts().perSuperset()).toArray();
    for (WeekCounts count : counts) {
      for (int subject = 0; subject < count.subjects(); subject++) {
        add(count, count.together(subject));
      }
    }
  }

  private void add(WeekCounts count, int units) {
    sums.add(count.rule, units);
  }

  /**
   * Adds a session, of which nothing is there yet.
   *
   * @param places its exercises by place, null where there is none
   */
  public void add(WeekDay day, Candidate[] places) {
    for (int first = 0; first < places.length; first += perSuperset[day.index()]) {
      superset(day.index(), places, first, 1);
    }
  }

  /**
   * Works out what a change of one session would make of the week. Then either {@link #undo} it, or
   * make it in the places.
   *
   * @param places of the session before the change, and again afterwards
   */
  public void tryOut(WeekDay day, Candidate[] places, Change change) {
    touched(day.index(), places, change, -1);
    change.exchange(places);
    touched(day.index(), places, change, 1);
    change.exchange(places);
  }

  /** Forgets a change that was tried out. */
  public void undo(WeekDay day, Candidate[] places, Change change) {
    change.exchange(places);
    touched(day.index(), places, change, -1);
    change.exchange(places);
    touched(day.index(), places, change, 1);
  }

  /** Hard points of the week, at most 0. */
  public int hard() {
    return sums.hard();
  }

  /** Medium points of the week, at most 0. */
  public int medium() {
    return sums.medium();
  }

  /** Soft points of the week, at most 0. */
  public int soft() {
    return sums.soft();
  }

  private void touched(int day, Candidate[] places, Change change, int sign) {
    int last = -1;
    for (int i = 0; i < change.size(); i++) {
      int first = change.place(i) - change.place(i) % perSuperset[day];
      if (first != last) {
        superset(day, places, first, sign);
        last = first;
      }
    }
  }

  private void superset(int day, Candidate[] places, int first, int sign) {
    for (int place = first; place < first + perSuperset[day]; place++) {
      if (Group.counts(places, first, place)) {
        for (WeekCounts count : counts) {
          add(count, count.count(day, places[place], sign));
        }
      }
    }
  }
}
