package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import counterset.timeline.SessionLength;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * A session from which a few exercises were taken, and what it would be worth with others in their
 * places. It serves one thread.
 */
final class Exchange {

  private final SessionFacts facts;
  private final Session from;
  private final Candidate[] left;
  private final Candidate[] filled;
  private final SessionScore score;
  // Null where there are no tracks.
  private final FollowerCast followers;

  /**
   * A session with gaps.
   *
   * @param usable what may be put in its gaps
   * @param gaps the places whose exercises are taken out
   */
  Exchange(
      Problem problem,
      Catalogue catalogue,
      Collection<Exercise> usable,
      Session from,
      Set<At> gaps) {
    this.from = from;
    this.facts =
        new SessionFacts(
            problem, catalogue, exercises(usable, from, gaps), supersets(problem, from));
    int places = facts.supersets() * facts.perSuperset();
    this.left = new Candidate[places];
    this.filled = new Candidate[places];
    this.score = new SessionScore(facts);
    this.followers =
        facts.tracks() == 0 ? null : new FollowerCast(facts, standIns(from.modifications()));
    forEach(from, (at, exercise) -> left[place(at)] = gaps.contains(at) ? null : of(exercise));
    score.compute(left);
  }

  private Candidate[] standIns(List<Map<At, Exercise>> modifications) {
    Candidate[] standIns = new Candidate[facts.tracks() * left.length];
    for (int track = 0; track < Math.min(facts.tracks(), modifications.size()); track++) {
      int offset = track * left.length;
      modifications
          .get(track)
          .forEach((at, exercise) -> standIns[offset + place(at)] = of(exercise));
    }
    return standIns;
  }

  /** What was taken out counts no more, not even as something that the client could have done. */
  private static Set<Exercise> exercises(Collection<Exercise> usable, Session from, Set<At> gaps) {
    Set<Exercise> exercises = new LinkedHashSet<>(usable);
    forEach(
        from,
        (at, exercise) -> {
          if (!gaps.contains(at)) {
            exercises.add(exercise);
          }
        });
    from.modifications().forEach(track -> exercises.addAll(track.values()));
    return exercises;
  }

  private static int supersets(Problem problem, Session from) {
    return Math.max(
        SessionLength.supersetsThatFit(problem.clock(), problem.minutes()),
        from.supersets().size());
  }

  private static void forEach(Session session, BiConsumer<At, Exercise> visitor) {
    for (Superset superset : session.supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        visitor.accept(new At(superset.number(), position), superset.exercises().get(position));
      }
    }
  }

  /** How many places there are. */
  int places() {
    return left.length;
  }

  /** The candidate of an exercise that is usable or stands in the session. */
  Candidate of(Exercise exercise) {
    return facts.candidate(exercise.id()).orElseThrow();
  }

  /** The index of a place. */
  int place(At at) {
    return (at.superset() - 1) * facts.perSuperset() + at.position();
  }

  /** Whether what was left holds an exercise or a variant of it. */
  boolean holds(Candidate candidate) {
    for (Candidate other : left) {
      if (other != null && other.root() == candidate.root()) {
        return true;
      }
    }
    return false;
  }

  /** What the session is worth once its gaps are filled, at most: the tracks not counted. */
  Worth atMost(Change change) {
    score.tryOut(change);
    return new Worth(score.hard(), score.medium(), score.soft());
  }

  /** What the session is worth once its gaps are filled, modifications chosen anew as needed. */
  Worth worth(Change change) {
    Worth own = atMost(change);
    if (followers == null) {
      return own;
    }
    fill(change);
    return own.plus(followers.choose(left, filled));
  }

  /** The same, with better modifications sought where these break a rule or leave a wish unmet. */
  Worth settle(Change change) {
    Worth own = atMost(change);
    fill(change);
    if (followers == null) {
      return own;
    }
    followers.choose(left, filled);
    return own.plus(followers.improve(filled, change));
  }

  /** The session last settled. */
  Session session() {
    Candidate[] standIns = followers == null ? new Candidate[0] : followers.standIns();
    Lineup lineup = new Lineup(facts, filled, standIns);
    return new Session(
        from.warmUp(),
        lineup.supersets().subList(0, from.supersets().size()),
        from.coolDown(),
        lineup.modifications());
  }

  private void fill(Change change) {
    change.exchange(left);
    System.arraycopy(left, 0, filled, 0, left.length);
    change.exchange(left);
  }
}
