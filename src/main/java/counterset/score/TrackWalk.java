package counterset.score;

import java.util.List;

/**
 * Walks through a session once for each track, as its followers do it, and tells a sink every
 * match. It keeps scratch arrays, so an instance serves one thread.
 */
final class TrackWalk {

  private final SessionFacts facts;
  private final Rules<TrackConstraint> places;
  private final Rules<TrackConstraint> pairs;
  private final Rules<StepConstraint> steps;
  private final Rules<CountConstraint> counts;

  /** By constraint that counts and by candidate: pairs of a tag and an amount. */
  private final List<int[][]> tagsOf;

  private final Candidate[] effective;
  private final boolean[] counted;
  private final boolean[] isModified;
  private final StepWalk walk;

  TrackWalk(SessionFacts facts) {
    this.facts = facts;
    Rules<TrackConstraint> all = Rules.all(TrackConstraint.class, facts);
    places = all.where(constraint -> !constraint.isOfPairs());
    pairs = all.where(TrackConstraint::isOfPairs);
    steps = Rules.all(StepConstraint.class, facts).where(StepConstraint::isForTracks);
    counts = Rules.all(CountConstraint.class, facts).where(this::isForSomeTrack);
    tagsOf = counts.constraints().stream().map(c -> Tables.tags(c, facts)).toList();
    effective = new Candidate[facts.supersets() * facts.perSuperset()];
    counted = new boolean[effective.length];
    isModified = new boolean[effective.length];
    walk = new StepWalk(facts);
  }

  private boolean isForSomeTrack(CountConstraint constraint) {
    int tags = facts.tracks() == 0 ? 0 : constraint.tags(facts);
    for (int track = 0; track < facts.tracks(); track++) {
      for (int tag = 0; tag < tags; tag++) {
        if (constraint.isForTrack(facts, track, tag)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Walks through all tracks.
   *
   * @param main the exercises by place, null where there is none
   * @param standIns by track and place, null where there is none
   */
  void walk(Candidate[] main, Candidate[] standIns, Sink sink) {
    for (int track = 0; track < facts.tracks(); track++) {
      Turns.effective(main, standIns, track, facts.perSuperset(), effective);
      for (int place = 0; place < main.length; place++) {
        int first = place - place % facts.perSuperset();
        counted[place] = main[place] != null && Turns.firstSide(main, first, place) == place;
        isModified[place] = main[place] != null && main[place].isUnsuited(track);
      }
      places(main, track, sink);
      pairs(track, sink);
      counts(track, sink);
      steps(track, sink);
    }
  }

  private void places(Candidate[] main, int track, Sink sink) {
    for (int place = 0; place < main.length; place++) {
      if (counted[place] && isModified[place]) {
        for (int i = 0; i < places.size(); i++) {
          int amount = places.constraint(i).measure(main[place], effective[place]);
          if (amount > 0) {
            String subject = effective[place] == null ? null : effective[place].exercise().id();
            sink.match(places.rule(i), amount, place, Sink.NOWHERE, subject, track);
          }
        }
      }
    }
  }

  private void pairs(int track, Sink sink) {
    for (int later = 1; later < effective.length; later++) {
      if (!counted[later] || effective[later] == null) {
        continue;
      }
      for (int earlier = 0; earlier < later; earlier++) {
        if ((isModified[later] || isModified[earlier])
            && counted[earlier]
            && effective[earlier] != null) {
          pair(earlier, later, track, sink);
        }
      }
    }
  }

  private void pair(int earlier, int later, int track, Sink sink) {
    for (int i = 0; i < pairs.size(); i++) {
      int amount = pairs.constraint(i).measurePair(effective[earlier], effective[later]);
      if (amount > 0) {
        Candidate modification = effective[isModified[later] ? later : earlier];
        String subject = modification.exercise().id();
        sink.match(pairs.rule(i), amount, earlier, later, subject, track);
      }
    }
  }

  private void counts(int track, Sink sink) {
    for (int i = 0; i < counts.size(); i++) {
      CountConstraint constraint = counts.constraint(i);
      int[] count = count(tagsOf.get(i), constraint.tags(facts));
      for (int tag = 0; tag < count.length; tag++) {
        if (constraint.isForTrack(facts, track, tag)) {
          int amount = constraint.measure(facts, tag, count[tag]);
          if (amount > 0) {
            String subject = constraint.subject(facts, tag);
            sink.match(counts.rule(i), amount, Sink.NOWHERE, Sink.NOWHERE, subject, track);
          }
        }
      }
    }
  }

  private int[] count(int[][] tags, int size) {
    int[] count = new int[size];
    for (int place = 0; place < effective.length; place++) {
      if (counted[place] && effective[place] != null) {
        int[] own = tags[effective[place].index()];
        for (int i = 0; i < own.length; i += 2) {
          count[own[i]] += own[i + 1];
        }
      }
    }
    return count;
  }

  private void steps(int track, Sink sink) {
    walk.start();
    for (int index = 0; index < walk.size(); index++) {
      if (walk.go(effective, index)) {
        for (int i = 0; i < steps.size(); i++) {
          int amount = steps.constraint(i).measure(walk.step);
          if (amount > 0) {
            sink.match(steps.rule(i), amount, walk.from, walk.place(index), null, track);
          }
        }
      }
    }
  }
}
