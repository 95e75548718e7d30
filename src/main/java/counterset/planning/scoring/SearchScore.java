package counterset.planning.scoring;

import counterset.model.SupersetKind;
import counterset.planning.Candidate;
import counterset.planning.OneSidedShare;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.Shares;
import counterset.planning.constraints.SessionConstraint;
import counterset.timeline.Handling;
import counterset.timeline.Kit;
import java.util.Arrays;

/**
 * The score that drives the search: the sum that {@link StraightLine} would make of a session,
 * without its matches.
 *
 * <p>It counts where the straight line compares every two exercises, which makes it several times
 * faster. It keeps scratch arrays, so an instance serves one thread.
 */
public final class SearchScore {

  private static final int MODERATE = 2;

  private final SessionFacts facts;
  private final Tables tables;
  private final Kit kit;
  private final int perSuperset;
  private final int rounds;
  private final int roomInside;
  private final int roomInRest;
  private final Kept kept;
  private final int wTooLong;
  private final int wItem;
  private final int wSecond;
  private final int wTrip;
  private final int wSameMuscle;
  private final int wJoint;
  private final int wSides;
  private final int wEmpty;
  private final int wPair;
  private final int wLight;
  private final int wOrder;
  private final int wFamily;
  private final int wRepeat;
  private final int[] rootCount;
  private final int[] familyCount;
  private final int[] halfSets;
  private final int[] direct;
  private final int[] occurrence;
  private int occurrences;
  private int hard;
  private int medium;
  private int soft;

  public SearchScore(SessionFacts facts) {
    this.facts = facts;
    tables = new Tables(facts);
    kit = facts.kit();
    perSuperset = facts.perSuperset();
    rounds = facts.clock().rounds();
    roomInside = Kit.roomInside(facts.clock());
    roomInRest = Kit.roomInRest(facts.clock());
    kept = new Kept(facts);
    wTooLong = tables.weight(SessionConstraint.CHANGEOVER_TOO_LONG);
    wItem = tables.weight(SessionConstraint.EQUIPMENT_CHANGE);
    wSecond = tables.weight(SessionConstraint.CHANGEOVER_SECONDS);
    wTrip = tables.weight(SessionConstraint.FLOOR_TRIP);
    wSameMuscle =
        tables.sameMuscleMatters ? tables.weight(SessionConstraint.SAME_MUSCLE_IN_A_ROW) : 0;
    wJoint = tables.weight(SessionConstraint.JOINT_AGAIN);
    wSides = tables.weight(SessionConstraint.SIDES_SPLIT);
    wEmpty = tables.weight(SessionConstraint.SUPERSET_EMPTY);
    wPair = tables.weight(SessionConstraint.OPPOSING_PAIR);
    wLight = tables.weight(SessionConstraint.TOO_LIGHT);
    wOrder = tables.weight(SessionConstraint.LIGHT_BEFORE_HEAVY);
    wFamily = tables.weight(SessionConstraint.FAMILY_AGAIN);
    wRepeat = tables.weight(SessionConstraint.EXERCISE_REPEATED);
    rootCount = new int[tables.roots];
    familyCount = new int[tables.families];
    halfSets = new int[tables.emphasis.length];
    direct = new int[tables.emphasis.length];
    occurrence = new int[facts.supersets() * perSuperset];
  }

  /**
   * Works out the score of a session.
   *
   * @param places the candidates by place, null where there is none
   */
  public void compute(Candidate[] places) {
    hard =
        -kept.cost(places)
            - tables.weight(SessionConstraint.CLOCK_OVERRUN) * facts.overrunSeconds();
    medium = 0;
    soft = 0;
    supersets(places);
    walk(places);
    occurrences();
    volume();
  }

  /** Hard points of the last session computed, at most 0. */
  public int hard() {
    return hard;
  }

  /** Medium points of the last session computed, at most 0. */
  public int medium() {
    return medium;
  }

  /** Soft points of the last session computed. */
  public int soft() {
    return soft;
  }

  private void supersets(Candidate[] places) {
    occurrences = 0;
    int oneSided = 0;
    int lightness = 0;
    for (int first = 0; first < places.length; first += perSuperset) {
      boolean full = true;
      for (int place = first; place < first + perSuperset; place++) {
        Candidate candidate = places[place];
        if (candidate == null) {
          full = false;
          continue;
        }
        int index = candidate.index();
        lightness += MODERATE - tables.intensity[index];
        soft -= tables.placeSoft[index];
        if (!tables.unilateral[index]) {
          occurrence[occurrences++] = index;
        } else if (!stoodBefore(places, first, place)) {
          occurrence[occurrences++] = index;
          if (perSuperset != 2 || places[first] != places[first + 1]) {
            hard -= wSides;
          }
        }
      }
      if (!full) {
        medium -= wEmpty;
      } else if (perSuperset > 1) {
        SupersetKind kind = kind(places, first);
        oneSided += kind == SupersetKind.UNILATERAL ? 1 : 0;
        soft += wPair * PairPoints.of(facts.problem().pairing(), kind);
      }
    }
    soft -= lightness > 0 ? wLight * lightness : 0;
    if (perSuperset == 2) {
      soft -=
          tables.weight(SessionConstraint.ONE_SIDED_SHARE)
              * OneSidedShare.distance(oneSided, facts.supersets());
    }
  }

  private static boolean stoodBefore(Candidate[] places, int first, int place) {
    for (int earlier = first; earlier < place; earlier++) {
      if (places[earlier] == places[place]) {
        return true;
      }
    }
    return false;
  }

  private SupersetKind kind(Candidate[] places, int first) {
    SupersetKind weakest = facts.kind(places[first], places[first + 1]);
    for (int place = first + 1; place < first + perSuperset - 1; place++) {
      SupersetKind link = facts.kind(places[place], places[place + 1]);
      weakest = link.compareTo(weakest) > 0 ? link : weakest;
    }
    return weakest;
  }

  /** From one place to the next: what is handled, round by round, and what neighbours share. */
  private void walk(Candidate[] places) {
    long inUse = 0;
    int trips = 0;
    Candidate last = null;
    int lastPlace = -1;
    for (int first = 0; first < places.length; first += perSuperset) {
      for (int round = 0; round < rounds; round++) {
        boolean inside = false;
        for (int place = first; place < first + perSuperset; place++) {
          Candidate next = places[place];
          if (next == null) {
            continue;
          }
          Handling handling = next.handling();
          if (last != null
              && (last != next || (inUse & ~handling.keeps() | handling.needs() & ~inUse) != 0)) {
            change(inUse, last.handling(), handling, inside ? roomInside : roomInRest);
            if (tables.floor[last.index()] != tables.floor[next.index()] && trips++ > 0) {
              soft -= wTrip;
            }
          }
          if (last != null && round == 0) {
            neighbours(last, next, lastPlace / perSuperset == place / perSuperset);
          }
          inUse = Kit.inUseAfter(inUse, handling);
          last = next;
          lastPlace = place;
          inside = true;
        }
      }
    }
  }

  private void change(long inUse, Handling last, Handling next, int room) {
    int items = Long.bitCount(Kit.takenOff(inUse, next)) + Long.bitCount(Kit.putOn(inUse, next));
    int seconds = kit.seconds(inUse, last, next);
    soft -= wItem * items + wSecond * seconds;
    if (seconds > room) {
      hard -= wTooLong * (seconds - room);
    }
  }

  private void neighbours(Candidate last, Candidate next, boolean inside) {
    int before = last.index();
    int after = next.index();
    if (inside && before == after && tables.unilateral[after]) {
      return;
    }
    if ((tables.primary[before] & tables.primary[after]) != 0) {
      soft -= wSameMuscle * PairPoints.sameMuscle(inside);
    }
    soft -= wJoint * Integer.bitCount(tables.strained[before] & tables.strained[after]);
  }

  /** Every exercise once, and how it goes with all that came before it. */
  private void occurrences() {
    Arrays.fill(halfSets, 0);
    Arrays.fill(direct, 0);
    int light = 0;
    int middling = 0;
    long used = 0;
    long included = 0;
    for (int i = 0; i < occurrences; i++) {
      int index = occurrence[i];
      hard -= tables.ownHard[index] + wRepeat * rootCount[tables.root[index]]++;
      int heavier =
          tables.intensity[index] == 3
              ? 2 * light + middling
              : tables.intensity[index] == 2 ? light : 0;
      soft -=
          tables.ownSoft[index] + wFamily * familyCount[tables.family[index]]++ + wOrder * heavier;
      light += tables.intensity[index] == 1 ? 1 : 0;
      middling += tables.intensity[index] == 2 ? 1 : 0;
      used |= tables.uses[index];
      included |= tables.included[index];
      int[] trained = tables.trained[index];
      for (int t = 0; t < trained.length; t += 2) {
        halfSets[trained[t]] += trained[t + 1];
        direct[trained[t]] += trained[t + 1] >> 1;
      }
    }
    for (int i = 0; i < occurrences; i++) {
      rootCount[tables.root[occurrence[i]]] = 0;
      familyCount[tables.family[occurrence[i]]] = 0;
    }
    medium -=
        tables.weight(SessionConstraint.EQUIPMENT_UNUSED) * (tables.items - Long.bitCount(used));
    medium -=
        tables.weight(SessionConstraint.INCLUDE_MISSING)
            * (tables.wishes - Long.bitCount(included));
  }

  private void volume() {
    int all = 0;
    for (int target = 0; target < halfSets.length; target++) {
      all += halfSets[target] * rounds;
      int missing = tables.minSets[target] - direct[target] * rounds;
      medium -= missing > 0 ? missing * tables.weight(SessionConstraint.TARGET_UNCOVERED) : 0;
    }
    int away = 0;
    for (int target = 0; target < halfSets.length; target++) {
      away +=
          Shares.squaredDistance(
              halfSets[target] * rounds, all, tables.emphasis[target], tables.emphasisSum);
    }
    soft -= tables.weight(SessionConstraint.UNEVEN_VOLUME) * away;
  }
}
