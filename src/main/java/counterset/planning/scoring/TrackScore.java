package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.Turns;
import counterset.planning.constraints.SessionConstraint;
import counterset.timeline.Handling;
import counterset.timeline.Kit;
import java.util.Arrays;

/**
 * What the tracks of a session add to its {@link SearchScore}: the sum that {@link StraightTracks}
 * would make, without its matches.
 *
 * <p>It keeps scratch arrays, so an instance serves one thread.
 */
public final class TrackScore {

  private final SessionFacts facts;
  private final Tables tables;
  private final Kit kit;
  private final int perSuperset;
  private final int rounds;
  private final int roomInside;
  private final int roomInRest;
  private final int wMissing;
  private final int wRepeated;
  private final int wUncovered;
  private final int wTooLong;
  private final int wAwkward;
  private final Candidate[] effective;
  private final int[] direct;
  // How often a root was done in the track so far, as it stands in the session and as a
  // modification.
  private final int[] plain;
  private final int[] modified;
  private int hard;
  private int medium;
  private int soft;

  public TrackScore(SessionFacts facts) {
    this.facts = facts;
    tables = Tables.of(facts);
    kit = facts.kit();
    perSuperset = facts.perSuperset();
    rounds = facts.clock().rounds();
    roomInside = Kit.roomInside(facts.clock());
    roomInRest = Kit.roomInRest(facts.clock());
    wMissing = tables.weight(SessionConstraint.MODIFICATION_MISSING);
    wRepeated = tables.weight(SessionConstraint.TRACK_REPEATED);
    wUncovered = tables.weight(SessionConstraint.TARGET_UNCOVERED);
    wTooLong = tables.weight(SessionConstraint.CHANGEOVER_TOO_LONG);
    wAwkward = tables.weight(SessionConstraint.MODIFICATION_AWKWARD);
    effective = new Candidate[facts.supersets() * perSuperset];
    direct = new int[tables.minSets.length];
    plain = new int[tables.roots];
    modified = new int[tables.roots];
  }

  /**
   * Works out what all tracks add.
   *
   * @param places the candidates by place, null where there is none
   * @param standIns by track and place, null where there is none
   */
  public void compute(Candidate[] places, Candidate[] standIns) {
    hard = 0;
    medium = 0;
    soft = 0;
    for (int track = 0; track < facts.tracks(); track++) {
      Turns.effective(places, standIns, track, perSuperset, effective);
      occurrences(places, track);
      volume(track);
      walk();
    }
  }

  /** Hard points of the tracks last computed, at most 0. */
  public int hard() {
    return hard;
  }

  /** Medium points of the tracks last computed, at most 0. */
  public int medium() {
    return medium;
  }

  /** Soft points of the tracks last computed, at most 0. */
  public int soft() {
    return soft;
  }

  private void occurrences(Candidate[] places, int track) {
    Arrays.fill(direct, 0);
    for (int place = 0; place < places.length; place++) {
      Candidate main = places[place];
      if (main == null || Turns.firstSide(places, place - place % perSuperset, place) != place) {
        continue;
      }
      Candidate done = effective[place];
      if (done == null) {
        hard -= wMissing;
        continue;
      }
      int root = tables.root[done.index()];
      if (done == main) {
        hard -= wRepeated * modified[root];
        plain[root]++;
      } else {
        hard -= wRepeated * (plain[root] + modified[root]);
        modified[root]++;
        soft -= wAwkward * done.awkwardnessFor(main);
      }
      int[] trained = tables.trained[done.index()];
      for (int t = 0; t < trained.length; t += 2) {
        direct[trained[t]] += trained[t + 1] >> 1;
      }
    }
    for (Candidate done : effective) {
      if (done != null) {
        plain[done.root()] = 0;
        modified[done.root()] = 0;
      }
    }
  }

  private void volume(int track) {
    for (int target = 0; target < direct.length; target++) {
      int missing = tables.minSets[target] - direct[target] * rounds;
      if (missing > 0 && facts.canTrain(track, target)) {
        medium -= wUncovered * missing;
      }
    }
  }

  private void walk() {
    long inUse = 0;
    Handling last = null;
    for (int first = 0; first < effective.length; first += perSuperset) {
      for (int round = 0; round < rounds; round++) {
        boolean inside = false;
        for (int place = first; place < first + perSuperset; place++) {
          if (effective[place] == null) {
            continue;
          }
          Handling next = effective[place].handling();
          if (last != null && last != next) {
            int room = inside ? roomInside : roomInRest;
            hard -= wTooLong * Math.max(0, kit.seconds(inUse, last, next) - room);
          }
          inUse = Kit.inUseAfter(inUse, next);
          last = next;
          inside = true;
        }
      }
    }
  }
}
