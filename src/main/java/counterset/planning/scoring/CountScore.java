package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;

/**
 * What the exercises of a session are worth together, each counted once: repeats, families, volume
 * by target, wishes, main lifts, and heavy work before light.
 */
final class CountScore {

  private final Tables tables;
  private final int perSuperset;
  private final int rounds;
  private final int wRepeat;
  private final int wFamily;
  private final int wOrder;
  private final int wUnused;
  private final int wMissing;
  private final int wUncovered;
  private final int wVolume;
  private final int wLift;
  private final VolumeTable volumes;
  private final LiftCount lifts;
  private final int[] rootCount;
  private final int[] familyCount;
  private final int[] halfSets;
  private final int[] direct;

  // By place: the exercise that counts there, null for none; of the session under way.
  private final Candidate[] counted;
  private final Candidate[] before;
  private int stepsNow;
  private int wishesNow;
  private long volumeNow;
  private int liftsNow;
  private int ownHard;
  private int ownSoft;
  private int hard;
  private int medium;
  private int soft;

  CountScore(SessionFacts facts, Tables tables) {
    this.tables = tables;
    perSuperset = facts.perSuperset();
    rounds = facts.clock().rounds();
    wRepeat = tables.weight(SessionConstraint.EXERCISE_REPEATED);
    wFamily = tables.weight(SessionConstraint.FAMILY_AGAIN);
    wOrder = tables.weight(SessionConstraint.LIGHT_BEFORE_HEAVY);
    wUnused = tables.weight(SessionConstraint.EQUIPMENT_UNUSED);
    wMissing = tables.weight(SessionConstraint.INCLUDE_MISSING);
    wUncovered = tables.weight(SessionConstraint.TARGET_UNCOVERED);
    wVolume = tables.weight(SessionConstraint.UNEVEN_VOLUME);
    wLift = tables.weight(SessionConstraint.MAIN_LIFT_MISSING);
    lifts = new LiftCount(facts);
    volumes = new VolumeTable(tables.emphasis, tables.emphasisSum);
    rootCount = new int[tables.roots];
    familyCount = new int[tables.families];
    halfSets = new int[tables.emphasis.length];
    direct = new int[tables.emphasis.length];
    counted = new Candidate[facts.supersets() * perSuperset];
    before = new Candidate[counted.length];
  }

  void compute(Candidate[] places) {
    for (int place = 0; place < counted.length; place++) {
      remove(counted[place]);
      counted[place] = countsAt(places, place) ? places[place] : null;
    }
    for (Candidate candidate : counted) {
      add(candidate);
    }
    stepsNow = stepsUp();
    wishesNow = wishes();
    volumeNow = volume();
    liftsNow = lifts.missing();
    set(stepsNow, wishesNow, volumeNow, liftsNow);
  }

  /** Works out the session last computed with a change that is already made in the places. */
  void tryOut(Candidate[] places, Change change) {
    boolean reranked = false;
    boolean others = !change.isReorder();
    int done = -1;
    for (int i = 0; i < change.size(); i++) {
      int superset = change.place(i) / perSuperset;
      if (superset != done) {
        done = superset;
        for (int place = superset * perSuperset; place < (superset + 1) * perSuperset; place++) {
          Candidate old = counted[place];
          Candidate now = countsAt(places, place) ? places[place] : null;
          before[place] = old;
          counted[place] = now;
          if (now != old) {
            reranked |= rank(now) != rank(old);
            if (others) {
              remove(old);
              add(now);
            }
          }
        }
      }
    }
    set(
        reranked ? stepsUp() : stepsNow,
        others ? wishes() : wishesNow,
        others ? volume() : volumeNow,
        others ? lifts.missing() : liftsNow);
    restore(change, others);
  }

  private void restore(Change change, boolean others) {
    int done = -1;
    for (int i = 0; i < change.size(); i++) {
      int superset = change.place(i) / perSuperset;
      if (superset != done) {
        done = superset;
        for (int place = superset * perSuperset; place < (superset + 1) * perSuperset; place++) {
          if (others && counted[place] != before[place]) {
            remove(counted[place]);
            add(before[place]);
          }
          counted[place] = before[place];
        }
      }
    }
  }

  private void set(int steps, int wishes, long volume, int missingLifts) {
    hard = ownHard;
    medium = wishes - (int) (volume >>> 32) * wUncovered;
    soft = ownSoft - wOrder * steps - wVolume * (int) volume - wLift * missingLifts;
  }

  private int rank(Candidate candidate) {
    return candidate == null ? 0 : tables.intensity[candidate.index()];
  }

  int hard() {
    return hard;
  }

  int medium() {
    return medium;
  }

  int soft() {
    return soft;
  }

  private boolean countsAt(Candidate[] places, int place) {
    Candidate candidate = places[place];
    return candidate != null
        && !(tables.unilateral[candidate.index()]
            && Tables.stoodBefore(places, place - place % perSuperset, place));
  }

  private void remove(Candidate candidate) {
    if (candidate == null) {
      return;
    }
    int index = candidate.index();
    lifts.remove(index);
    ownHard += tables.ownHard[index] + wRepeat * --rootCount[tables.root[index]];
    ownSoft += tables.ownSoft[index] + wFamily * --familyCount[tables.family[index]];
    int[] trained = tables.trained[index];
    for (int t = 0; t < trained.length; t += 2) {
      halfSets[trained[t]] -= trained[t + 1];
      direct[trained[t]] -= trained[t + 1] >> 1;
    }
  }

  private void add(Candidate candidate) {
    if (candidate == null) {
      return;
    }
    int index = candidate.index();
    lifts.add(index);
    ownHard -= tables.ownHard[index] + wRepeat * rootCount[tables.root[index]]++;
    ownSoft -= tables.ownSoft[index] + wFamily * familyCount[tables.family[index]]++;
    int[] trained = tables.trained[index];
    for (int t = 0; t < trained.length; t += 2) {
      halfSets[trained[t]] += trained[t + 1];
      direct[trained[t]] += trained[t + 1] >> 1;
    }
  }

  /** Sets that targets are short of in the upper half, squared distances in the lower. */
  private long volume() {
    int all = 0;
    int uncovered = 0;
    for (int target = 0; target < halfSets.length; target++) {
      all += halfSets[target];
      int missing = tables.minSets[target] - direct[target] * rounds;
      uncovered += missing > 0 ? missing : 0;
    }
    int away = 0;
    for (int target = 0; target < halfSets.length; target++) {
      away += volumes.away(target, halfSets[target] * rounds, all * rounds);
    }
    return (long) uncovered << 32 | away;
  }

  /** Medium points for what the coach listed or asked for and is not there. */
  private int wishes() {
    if (tables.items + tables.wishes == 0) {
      return 0;
    }
    long used = 0;
    long included = 0;
    for (Candidate candidate : counted) {
      if (candidate != null) {
        used |= tables.uses[candidate.index()];
        included |= tables.included[candidate.index()];
      }
    }
    return -wUnused * (tables.items - Long.bitCount(used))
        - wMissing * (tables.wishes - Long.bitCount(included));
  }

  /** Steps by which later exercises are heavier than earlier ones, over all pairs. */
  private int stepsUp() {
    int light = 0;
    int middling = 0;
    int steps = 0;
    for (Candidate candidate : counted) {
      switch (rank(candidate)) {
        case 1 -> light++;
        case 2 -> {
          steps += light;
          middling++;
        }
        case 3 -> steps += 2 * light + middling;
        default -> {
          // An empty place, or the second side.
        }
      }
    }
    return steps;
  }
}
