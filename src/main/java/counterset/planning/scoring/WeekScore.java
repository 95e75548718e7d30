package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.EarlierDay;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekRules;
import counterset.planning.WeekTarget;
import counterset.planning.constraints.WeekConstraint;
import java.util.List;

/**
 * What the constraints of a week add to the scores of its sessions: the sum that {@link WeekLedger}
 * would make, without its matches.
 *
 * <p>It follows the week exercise by exercise, so a small change costs little. An instance serves
 * one thread.
 */
public final class WeekScore {

  private final WeekTables tables;
  private final List<WeekTarget> targets;
  private final int[] perSuperset;
  private final int[] pointsByConstraint = new int[WeekConstraint.values().length];
  private final boolean recoveryIsRule;

  // How often each exercise, each family and each muscle group comes in each row; those of a
  // muscle group are direct sets.
  private final int[][] rootCount;
  private final int[][] familyCount;
  private final int[][] direct;
  private final int[] halfSets;
  private final int[] daysTrained;

  private int repeats;
  private int recovery;
  private int outside;
  private int missingDays;

  public WeekScore(WeekFacts facts) {
    tables = new WeekTables(facts);
    targets = facts.targets();
    perSuperset = facts.days().stream().mapToInt(day -> day.facts().perSuperset()).toArray();
    for (WeekConstraint constraint : WeekConstraint.values()) {
      pointsByConstraint[constraint.ordinal()] = constraint.weight(facts.problem());
    }
    recoveryIsRule = facts.problem().recoveryIsRule();
    rootCount = new int[tables.rows][tables.roots()];
    familyCount = new int[tables.rows][tables.families()];
    direct = new int[tables.rows][tables.muscles];
    halfSets = new int[targets.size()];
    daysTrained = new int[tables.muscles];
    for (WeekTarget target : targets) {
      outside += WeekRules.halfSetsOutside(target.range(), 0);
      missingDays += target.onSeveralDays() ? WeekRules.DAYS : 0;
    }
    for (EarlierDay earlier : facts.earlier()) {
      int row = tables.sessions + earlier.index();
      earlier.roots().forEach(id -> rootCount[row][tables.root(id)] = 1);
      earlier.families().forEach(id -> familyCount[row][tables.family(id)] = 1);
      for (String muscle : facts.catalogue().muscles().keySet()) {
        direct[row][tables.muscle(muscle)] = earlier.directSets().getOrDefault(muscle, 0);
      }
    }
  }

  /**
   * Adds a session, of which nothing is there yet.
   *
   * @param places its candidates by place, null where there is none
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
    return recoveryIsRule ? recoveryPoints() : 0;
  }

  /** Medium points of the week, at most 0. */
  public int medium() {
    return points(WeekConstraint.WEEK_FREQUENCY, missingDays);
  }

  /** Soft points of the week, at most 0. */
  public int soft() {
    return points(WeekConstraint.WEEKLY_VOLUME, outside)
        + points(WeekConstraint.WEEK_REPEATED, repeats)
        + (recoveryIsRule ? 0 : recoveryPoints());
  }

  private int recoveryPoints() {
    return points(WeekConstraint.RECOVERY_SHORT, recovery);
  }

  private int points(WeekConstraint constraint, int amount) {
    return -pointsByConstraint[constraint.ordinal()] * amount;
  }

  private void touched(int session, Candidate[] places, Change change, int sign) {
    int last = -1;
    for (int i = 0; i < change.size(); i++) {
      int first = change.place(i) - change.place(i) % perSuperset[session];
      if (first != last) {
        superset(session, places, first, sign);
        last = first;
      }
    }
  }

  private void superset(int session, Candidate[] places, int first, int sign) {
    for (int place = first; place < first + perSuperset[session]; place++) {
      if (places[place] != null && !isSecondSide(places, first, place)) {
        count(session, places[place], sign);
      }
    }
  }

  private static boolean isSecondSide(Candidate[] places, int first, int place) {
    if (places[place].unilateral()) {
      for (int earlier = first; earlier < place; earlier++) {
        if (places[earlier] == places[place]) {
          return true;
        }
      }
    }
    return false;
  }

  private void count(int session, Candidate candidate, int sign) {
    int index = candidate.index();
    repeats +=
        once(rootCount, tables.rootPoints[session], session, tables.root[session][index], sign);
    repeats +=
        once(
            familyCount,
            tables.familyPoints[session],
            session,
            tables.family[session][index],
            sign);
    int rounds = tables.rounds[session];
    for (long bits = candidate.primary(); bits != 0; bits &= bits - 1) {
      muscle(session, Long.numberOfTrailingZeros(bits), sign * rounds);
    }
    int[] halves = tables.halfSets[session][index];
    for (int target = 0; target < halves.length; target++) {
      if (halves[target] != 0) {
        volume(target, sign * rounds * halves[target]);
      }
    }
  }

  /** Counts one more or fewer, and tells by how much the cost of repetition rises. */
  private int once(int[][] counts, int[] points, int session, int subject, int sign) {
    int before = counts[session][subject];
    counts[session][subject] = before + sign;
    if (Math.min(before, before + sign) > 0) {
      return 0;
    }
    int sum = 0;
    for (int row = 0; row < points.length; row++) {
      if (points[row] != 0 && counts[row][subject] > 0) {
        sum += points[row];
      }
    }
    return sign * sum;
  }

  private void muscle(int session, int muscle, int sets) {
    int before = direct[session][muscle];
    int after = before + sets;
    direct[session][muscle] = after;
    boolean wasHeavy = before >= WeekRules.RECOVERY_SETS;
    boolean isHeavy = after >= WeekRules.RECOVERY_SETS;
    if (wasHeavy != isHeavy) {
      boolean[] near = tables.recoveryShort[session];
      for (int row = 0; row < near.length; row++) {
        if (near[row] && direct[row][muscle] >= WeekRules.RECOVERY_SETS) {
          recovery += isHeavy ? 1 : -1;
        }
      }
    }
    if (tables.onSeveralDays[muscle] && before > 0 != after > 0) {
      missingDays -= missing(muscle);
      daysTrained[muscle] += after > 0 ? 1 : -1;
      missingDays += missing(muscle);
    }
  }

  private int missing(int muscle) {
    return Math.max(0, WeekRules.DAYS - daysTrained[muscle]);
  }

  private void volume(int target, int more) {
    outside -= WeekRules.halfSetsOutside(targets.get(target).range(), halfSets[target]);
    halfSets[target] += more;
    outside += WeekRules.halfSetsOutside(targets.get(target).range(), halfSets[target]);
  }
}
