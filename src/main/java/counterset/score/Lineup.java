package counterset.score;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A session by numbers: what stands in each of its places.
 *
 * @param places superset by superset, null where there is nothing
 * @param standIns what the followers of each track do instead, track by track and by place; it
 *     counts only where what stands there does not suit them, and for both sides of a one-sided
 *     exercise the first place of the two counts
 */
public record Lineup(SessionFacts facts, Candidate[] places, Candidate[] standIns) {

  /** A session with nothing in it but what the coach keeps. */
  public static Lineup empty(SessionFacts facts) {
    Candidate[] places = new Candidate[facts.supersets() * facts.perSuperset()];
    for (int place = 0; place < places.length; place++) {
      places[place] = kept(facts, place);
    }
    return new Lineup(facts, places, new Candidate[places.length * facts.tracks()]);
  }

  /** What a wish to keep puts in a place; a one-sided exercise takes the whole superset. */
  private static Candidate kept(SessionFacts facts, int place) {
    At here = new At(place / facts.perSuperset() + 1, place % facts.perSuperset());
    for (Keep keep : facts.problem().keep()) {
      Candidate exercise = facts.candidate(keep.exercise()).orElseThrow();
      boolean both = exercise.unilateral() && facts.perSuperset() == 2;
      if (keep.at().superset() == here.superset()
          && (both || keep.at().position() == here.position())) {
        return exercise;
      }
    }
    return null;
  }

  /** A session as it is; its exercises must be among the candidates. */
  public static Lineup of(SessionFacts facts, Session session) {
    Lineup lineup = empty(facts);
    Arrays.fill(lineup.places, null);
    for (Superset superset : session.supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        int place = (superset.number() - 1) * facts.perSuperset() + position;
        lineup.places[place] = candidate(facts, superset.exercises().get(position));
      }
    }
    for (int track = 0; track < Math.min(facts.tracks(), session.modifications().size()); track++) {
      int offset = track * lineup.places.length;
      session
          .modifications()
          .get(track)
          .forEach(
              (at, exercise) ->
                  lineup.standIns[offset + place(facts, at)] = candidate(facts, exercise));
    }
    return lineup;
  }

  private static int place(SessionFacts facts, At at) {
    return (at.superset() - 1) * facts.perSuperset() + at.position();
  }

  private static Candidate candidate(SessionFacts facts, Exercise exercise) {
    return facts.candidate(exercise.id()).orElseThrow();
  }

  /** Where a place is. */
  public At at(int place) {
    return new At(place / facts.perSuperset() + 1, place % facts.perSuperset());
  }

  /** The supersets; one with a hole keeps what it has. */
  public List<Superset> supersets() {
    List<Superset> supersets = new ArrayList<>();
    for (int first = 0; first < places.length; first += facts.perSuperset()) {
      List<Exercise> exercises = new ArrayList<>();
      for (int place = first; place < first + facts.perSuperset(); place++) {
        if (places[place] != null) {
          exercises.add(places[place].exercise());
        }
      }
      supersets.add(new Superset(supersets.size() + 1, exercises));
    }
    return supersets;
  }

  /** The modifications by track, each where it is needed, as the supersets have it. */
  public List<Map<At, Exercise>> modifications() {
    List<Map<At, Exercise>> modifications = new ArrayList<>();
    for (int track = 0; track < facts.tracks(); track++) {
      Map<At, Exercise> own = new LinkedHashMap<>();
      for (int place = 0; place < places.length; place++) {
        Candidate standIn = standIns[track * places.length + place];
        if (standIn != null && places[place] != null && places[place].isUnsuited(track)) {
          own.put(closedUp(place), standIn.exercise());
        }
      }
      modifications.add(own);
    }
    return modifications;
  }

  /** Where the supersets have a place, which close up over holes. */
  private At closedUp(int place) {
    int first = place - place % facts.perSuperset();
    int position = 0;
    for (int earlier = first; earlier < place; earlier++) {
      position += places[earlier] == null ? 0 : 1;
    }
    return new At(place / facts.perSuperset() + 1, position);
  }

  /** The same in other arrays. */
  public Lineup copy() {
    return new Lineup(facts, places.clone(), standIns.clone());
  }
}
