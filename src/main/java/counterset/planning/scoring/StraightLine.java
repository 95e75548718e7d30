package counterset.planning.scoring;

import static counterset.planning.constraints.SessionConstraint.*;
import static counterset.planning.scoring.ScoreSink.NOWHERE;

import counterset.model.SupersetKind;
import counterset.planning.Candidate;
import counterset.planning.OneSidedShare;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.scoring.StraightOccurrences.Occurrence;
import java.util.ArrayList;
import java.util.List;

/**
 * Scores the places of a session in one straight pass and tells a sink every match.
 *
 * <p>{@link SearchScore} says the same as a sum, faster.
 */
final class StraightLine {

  private static final int MODERATE = 2;

  private final SessionFacts facts;
  private final int perSuperset;

  StraightLine(SessionFacts facts) {
    this.facts = facts;
    this.perSuperset = facts.perSuperset();
  }

  /**
   * Scores a session.
   *
   * @param places the candidates by place, null where there is none
   */
  void score(Candidate[] places, ScoreSink sink) {
    List<Occurrence> occurrences = supersets(places, sink);
    new StraightWalk(facts, places, sink).score();
    new StraightOccurrences(occurrences, sink).score();
    List<Candidate> work = occurrences.stream().map(Occurrence::candidate).toList();
    new StraightSession(facts, work, sink).score(places);
  }

  /** Scores the supersets one by one, and tells their different exercises. */
  private List<Occurrence> supersets(Candidate[] places, ScoreSink sink) {
    List<Occurrence> occurrences = new ArrayList<>();
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
            occurrences.add(new Occurrence(place, candidate));
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
    return occurrences;
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
}
