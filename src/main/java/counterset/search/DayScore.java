package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import counterset.score.TrackScore;
import counterset.score.WeekDay;
import counterset.score.WeekScore;

/** The score of one session of a draft, and what a change would make of it. */
final class DayScore {

  private final SessionScore session;
  // Null where there are no tracks.
  private final TrackScore tracks;
  private final Candidate[] places;
  private final Candidate[] standIns;
  private final Change change;
  private final Change standInChange;
  private final int[] balance;
  private final int[] moods;
  private final int perSuperset;
  // Null where the session is by itself.
  private WeekScore week;
  private WeekDay weekDay;
  private boolean tried;
  private boolean tracksKnown;

  // Of the base.
  private int hard;
  private int medium;
  private int soft;
  private int mood;
  private int trackHard;
  private int trackMedium;
  private int trackSoft;

  DayScore(SessionFacts facts, long mood) {
    moods = Mood.of(facts, mood);
    session = new SessionScore(facts);
    tracks = facts.tracks() == 0 ? null : new TrackScore(facts);
    places = new Candidate[facts.supersets() * facts.perSuperset()];
    standIns = new Candidate[places.length * facts.tracks()];
    change = new Change(places.length);
    standInChange = new Change(standIns.length);
    perSuperset = facts.perSuperset();
    balance = new int[facts.candidates().size()];
    clear();
  }

  /** Puts something into the base, which is to be computed then. */
  void set(int index, Candidate candidate) {
    if (index < places.length) {
      places[index] = candidate;
    } else {
      standIns[index - places.length] = candidate;
    }
  }

  /** From now on counts what a change of this session does to a week that it is part of already. */
  void joinWeek(WeekScore all, WeekDay day) {
    week = all;
    weekDay = day;
  }

  /** The places of the base; to be read only. */
  Candidate[] places() {
    return places;
  }

  void compute() {
    session.compute(places);
    hard = session.hard();
    medium = session.medium();
    mood = 0;
    for (Candidate exercise : places) {
      mood += mood(exercise);
    }
    soft = session.soft() - mood;
    tracksKnown = tracks == null;
  }

  /** Most bases are left before anybody asks for what their tracks cost. */
  private void computeTracks() {
    if (!tracksKnown) {
      tracksKnown = true;
      tracks.compute(places, standIns);
      trackHard = tracks.hard();
      trackMedium = tracks.medium();
      trackSoft = tracks.soft();
    }
  }

  /** Notes that a spot holds something else than in the base. */
  void change(int index, Candidate candidate) {
    if (index < places.length) {
      change.put(index, candidate);
    } else {
      standInChange.put(index - places.length, candidate);
    }
  }

  /** Makes what was noted part of the base. */
  void settle() {
    if (change.size() + standInChange.size() == 0) {
      return;
    }
    if (week != null && change.size() > 0) {
      week.tryOut(weekDay, places, change);
    }
    change.exchange(places);
    standInChange.exchange(standIns);
    clear();
    compute();
  }

  /** Works out what was noted. */
  void tryOut() {
    tried = change.size() + standInChange.size() > 0;
    if (!tried) {
      computeTracks();
      return;
    }
    if (change.size() > 0) {
      change.recognize(places, perSuperset, balance);
      session.tryOut(change);
      if (week != null) {
        week.tryOut(weekDay, places, change);
      }
    }
    if (tracks != null) {
      change.exchange(places);
      standInChange.exchange(standIns);
      tracks.compute(places, standIns);
      change.exchange(places);
      standInChange.exchange(standIns);
    }
  }

  private int mood(Candidate exercise) {
    return exercise == null ? 0 : moods[exercise.index()];
  }

  /** What the moods are once what was noted is made. */
  private int changedMood() {
    int changed = mood;
    for (int i = 0; i < change.size(); i++) {
      changed += mood(change.candidate(i)) - mood(places[change.place(i)]);
    }
    return changed;
  }

  /** Forgets what was noted. */
  void forget() {
    if (week != null && change.size() > 0) {
      week.undo(weekDay, places, change);
    }
    clear();
  }

  private void clear() {
    change.clear(false);
    standInChange.clear(false);
  }

  private boolean isOther() {
    return tried && change.size() > 0;
  }

  int hard() {
    return (isOther() ? session.hard() : hard)
        + (tried && tracks != null ? tracks.hard() : trackHard);
  }

  int medium() {
    return (isOther() ? session.medium() : medium)
        + (tried && tracks != null ? tracks.medium() : trackMedium);
  }

  int soft() {
    return (isOther() ? session.soft() - changedMood() : soft)
        + (tried && tracks != null ? tracks.soft() : trackSoft);
  }
}
