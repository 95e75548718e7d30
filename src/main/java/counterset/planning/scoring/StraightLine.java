package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.model.Keep;
import counterset.model.Pairing;
import counterset.model.SupersetKind;
import counterset.model.Target;
import counterset.planning.Candidate;
import counterset.planning.OneSidedShare;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.Shares;
import counterset.timeline.Kit;
import java.util.List;

/**
 * Scores the places of a session in one straight pass and tells a sink every match.
 *
 * <p>{@link SearchScore} says the same as a sum. It keeps scratch arrays, so an instance serves one
 * thread.
 */
final class StraightLine {

  private static final int MODERATE = 2;

  private final SessionFacts facts;
  private final int perSuperset;
  private final int[] emphasis;
  private final int[] minSets;
  private final int emphasisSum;
  private final int[] keptPlaces;
  private final String[] keptExercises;
  private final int[] halfSets;

  // The occurrences: every different exercise of a superset once, in order.
  private final Candidate[] occurrence;
  private final int[] occurrencePlace;
  private int occurrences;

  StraightLine(SessionFacts facts) {
    this.facts = facts;
    this.perSuperset = facts.perSuperset();
    List<Target> targets = facts.problem().targets();
    this.emphasis = targets.stream().mapToInt(Target::emphasis).toArray();
    this.minSets = targets.stream().mapToInt(Target::minSets).toArray();
    this.emphasisSum = targets.stream().mapToInt(Target::emphasis).sum();
    List<Keep> keeps = facts.problem().keep();
    this.keptPlaces =
        keeps.stream()
            .mapToInt(keep -> (keep.at().superset() - 1) * perSuperset + keep.at().position())
            .toArray();
    this.keptExercises = keeps.stream().map(Keep::exercise).toArray(String[]::new);
    this.halfSets = new int[targets.size()];
    this.occurrence = new Candidate[facts.supersets() * perSuperset];
    this.occurrencePlace = new int[occurrence.length];
  }

  /**
   * Scores a session.
   *
   * @param places the candidates by place, null where there is none
   */
  void score(Candidate[] places, ScoreSink sink) {
    supersets(places, sink);
    handling(places, sink);
    neighbours(places, sink);
    eachOccurrence(sink);
    pairsOfOccurrences(sink);
    volume(sink);
    wholeSession(places, sink);
  }

  private void supersets(Candidate[] places, ScoreSink sink) {
    occurrences = 0;
    int oneSided = 0;
    int lightness = 0;
    for (int first = 0; first < places.length; first += perSuperset) {
      boolean full = true;
      for (int place = first; place < first + perSuperset; place++) {
        Candidate candidate = places[place];
        if (candidate == null) {
          full = false;
        } else {
          lightness += MODERATE - candidate.intensity();
          if (!candidate.loaded()) {
            sink.match(UNLOADED, 1, place, NOWHERE, NOWHERE);
          }
          if (!isSecondSide(places, first, place)) {
            occurrence[occurrences] = candidate;
            occurrencePlace[occurrences++] = place;
            if (candidate.unilateral() && !fillsBothSides(places, first)) {
              sink.match(SIDES_SPLIT, 1, place, NOWHERE, NOWHERE);
            }
          }
        }
      }
      if (!full) {
        sink.match(SUPERSET_EMPTY, 1, first, NOWHERE, NOWHERE);
      } else if (perSuperset > 1) {
        SupersetKind kind = kind(places, first);
        oneSided += kind == SupersetKind.UNILATERAL ? 1 : 0;
        int points = pairPoints(kind);
        if (points > 0) {
          sink.match(OPPOSING_PAIR, points, first, first + perSuperset - 1, NOWHERE);
        }
      }
    }
    if (lightness > 0) {
      sink.match(TOO_LIGHT, lightness, NOWHERE, NOWHERE, NOWHERE);
    }
    int away = OneSidedShare.distance(oneSided, facts.supersets());
    if (away > 0 && perSuperset == 2) {
      sink.match(ONE_SIDED_SHARE, away, NOWHERE, NOWHERE, NOWHERE);
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

  private boolean fillsBothSides(Candidate[] places, int first) {
    return perSuperset == 2 && places[first] == places[first + 1];
  }

  private SupersetKind kind(Candidate[] places, int first) {
    SupersetKind weakest = facts.kind(places[first], places[first + 1]);
    for (int place = first + 1; place < first + perSuperset - 1; place++) {
      SupersetKind link = facts.kind(places[place], places[place + 1]);
      weakest = link.compareTo(weakest) > 0 ? link : weakest;
    }
    return weakest;
  }

  private int pairPoints(SupersetKind kind) {
    return PairPoints.of(facts.problem().pairing(), kind);
  }

  private void handling(Candidate[] places, ScoreSink sink) {
    Kit kit = facts.kit();
    int roomInside = Kit.roomInside(facts.clock());
    int roomInRest = Kit.roomInRest(facts.clock());
    long inUse = 0;
    int trips = 0;
    int last = NOWHERE;
    for (int first = 0; first < places.length; first += perSuperset) {
      for (int round = 0; round < facts.clock().rounds(); round++) {
        boolean inside = false;
        for (int place = first; place < first + perSuperset; place++) {
          Candidate next = places[place];
          if (next == null) {
            continue;
          }
          if (last != NOWHERE) {
            int items =
                Long.bitCount(Kit.takenOff(inUse, next.handling()))
                    + Long.bitCount(Kit.putOn(inUse, next.handling()));
            if (items > 0) {
              sink.match(EQUIPMENT_CHANGE, items, last, place, NOWHERE);
            }
            int seconds = kit.seconds(inUse, places[last].handling(), next.handling());
            if (seconds > 0) {
              sink.match(CHANGEOVER_SECONDS, seconds, last, place, NOWHERE);
              int excess = seconds - (inside ? roomInside : roomInRest);
              if (excess > 0) {
                sink.match(CHANGEOVER_TOO_LONG, excess, last, place, NOWHERE);
              }
            }
            if (places[last].floor() != next.floor() && trips++ > 0) {
              sink.match(FLOOR_TRIP, 1, last, place, NOWHERE);
            }
          }
          inUse = Kit.inUseAfter(inUse, next.handling());
          last = place;
          inside = true;
        }
      }
    }
  }

  private void neighbours(Candidate[] places, ScoreSink sink) {
    boolean sameMuscleMatters = facts.problem().pairing() != Pairing.COMPOUND;
    int last = NOWHERE;
    for (int place = 0; place < places.length; place++) {
      if (places[place] == null) {
        continue;
      }
      if (last != NOWHERE) {
        boolean inside = last / perSuperset == place / perSuperset;
        Candidate before = places[last];
        Candidate after = places[place];
        if (!(inside && before == after && after.unilateral())) {
          if (sameMuscleMatters && (before.primary() & after.primary()) != 0) {
            sink.match(SAME_MUSCLE_IN_A_ROW, PairPoints.sameMuscle(inside), last, place, NOWHERE);
          }
          int joints = before.strained() & after.strained();
          if (joints != 0) {
            sink.match(JOINT_AGAIN, Integer.bitCount(joints), last, place, NOWHERE);
          }
        }
      }
      last = place;
    }
  }

  private void eachOccurrence(ScoreSink sink) {
    for (int i = 0; i < occurrences; i++) {
      Candidate candidate = occurrence[i];
      int place = occurrencePlace[i];
      if (candidate.missing() > 0) {
        sink.match(EQUIPMENT_MISSING, candidate.missing(), place, NOWHERE, NOWHERE);
      }
      if (candidate.unsafe() > 0) {
        sink.match(UNSAFE_FOR_CLIENT, candidate.unsafe(), place, NOWHERE, NOWHERE);
      }
      if (candidate.aboveLevel()) {
        sink.match(ABOVE_LEVEL, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.excluded()) {
        sink.match(EXCLUDED, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.stepsBelow() > 0) {
        sink.match(TOO_EASY, candidate.stepsBelow(), place, NOWHERE, NOWHERE);
      }
      if (candidate.recentPoints() > 0) {
        sink.match(USED_RECENTLY, candidate.recentPoints(), place, NOWHERE, NOWHERE);
      }
      if (candidate.liked()) {
        sink.match(LIKES, 1, place, NOWHERE, NOWHERE);
      }
      if (candidate.disliked()) {
        sink.match(DISLIKES, 1, place, NOWHERE, NOWHERE);
      }
    }
  }

  private void pairsOfOccurrences(ScoreSink sink) {
    for (int j = 1; j < occurrences; j++) {
      Candidate later = occurrence[j];
      for (int i = 0; i < j; i++) {
        Candidate earlier = occurrence[i];
        if (later.intensity() > earlier.intensity()) {
          sink.match(
              LIGHT_BEFORE_HEAVY,
              later.intensity() - earlier.intensity(),
              occurrencePlace[i],
              occurrencePlace[j],
              NOWHERE);
        }
        if (later.family() == earlier.family()) {
          sink.match(FAMILY_AGAIN, 1, occurrencePlace[i], occurrencePlace[j], NOWHERE);
        }
        if (later.root() == earlier.root()) {
          sink.match(EXERCISE_REPEATED, 1, occurrencePlace[i], occurrencePlace[j], NOWHERE);
        }
      }
    }
  }

  private void volume(ScoreSink sink) {
    int rounds = facts.clock().rounds();
    int all = 0;
    for (int target = 0; target < halfSets.length; target++) {
      int halves = 0;
      int direct = 0;
      for (int i = 0; i < occurrences; i++) {
        int part = occurrence[i].halfSets()[target];
        halves += part;
        direct += part >> 1;
      }
      halfSets[target] = halves * rounds;
      all += halves * rounds;
      int missing = minSets[target] - direct * rounds;
      if (missing > 0) {
        sink.match(TARGET_UNCOVERED, missing, NOWHERE, NOWHERE, target);
      }
    }
    for (int target = 0; target < halfSets.length; target++) {
      int away = Shares.squaredDistance(halfSets[target], all, emphasis[target], emphasisSum);
      if (away > 0) {
        sink.match(UNEVEN_VOLUME, away, NOWHERE, NOWHERE, target);
      }
    }
  }

  private void wholeSession(Candidate[] places, ScoreSink sink) {
    long used = 0;
    long included = 0;
    for (int i = 0; i < occurrences; i++) {
      used |= occurrence[i].uses();
      included |= occurrence[i].included();
    }
    for (int item = 0; item < facts.problem().equipment().size(); item++) {
      if ((used & 1L << item) == 0) {
        sink.match(EQUIPMENT_UNUSED, 1, NOWHERE, NOWHERE, item);
      }
    }
    for (int wish = 0; wish < facts.problem().include().size(); wish++) {
      if ((included & 1L << wish) == 0) {
        sink.match(INCLUDE_MISSING, 1, NOWHERE, NOWHERE, wish);
      }
    }
    for (int i = 0; i < keptPlaces.length; i++) {
      boolean beyond = keptPlaces[i] >= places.length;
      if (beyond
          || places[keptPlaces[i]] == null
          || !places[keptPlaces[i]].exercise().id().equals(keptExercises[i])) {
        sink.match(KEPT_MOVED, 1, beyond ? NOWHERE : keptPlaces[i], NOWHERE, i);
      }
    }
    if (facts.overrunSeconds() > 0) {
      sink.match(CLOCK_OVERRUN, facts.overrunSeconds(), NOWHERE, NOWHERE, NOWHERE);
    }
  }
}
