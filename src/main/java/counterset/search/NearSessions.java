package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import counterset.score.TrackScore;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Looks for the best sessions that a few changes lead to, one number of changes after another: of
 * all small changes of the given session the best are kept, of all small changes of those again,
 * and so on. With one change nothing is left out, so that its best is the best there is.
 *
 * <p>An instance serves one thread.
 */
final class NearSessions {

  /** How many of each number of changes have pairs of exercises put in. */
  private static final int PAIRED = 3;

  /** How many of the most changes have one change traded for another. */
  private static final int TRADED = 6;

  private final SessionFacts facts;
  private final Candidate[] home;
  private final Candidate[] homeStandIns;
  private final int most;
  private final int width;
  private final Steps steps;
  private final SessionScore score;
  private final List<Shortlist> shortlists;
  // Null where there are no tracks.
  private final TrackScore followers;
  private final Cast cast;
  private final Ranking ranking;
  private final Candidate[] tried;
  private final Candidate[] triedStandIns;
  private long tries;

  /**
   * Sessions near one.
   *
   * @param start the given session
   * @param fixed by place, what stays
   * @param kept by place, what alone may come there; null where anything may
   * @param most how many changes at most, at least 0
   * @param width how many sessions of each number of changes are kept, at least 1
   */
  NearSessions(Lineup start, boolean[] fixed, Candidate[] kept, int most, int width) {
    this.facts = start.facts();
    this.most = most;
    this.width = width;
    this.home = start.places();
    this.homeStandIns = start.standIns();
    this.steps = new Steps(facts, fixed, kept);
    this.score = new SessionScore(facts);
    boolean alone = facts.tracks() == 0;
    this.ranking = alone ? null : new Ranking(facts);
    this.followers = alone ? null : new TrackScore(facts);
    this.cast = alone ? null : new Cast(facts, ranking);
    this.tried = new Candidate[home.length];
    this.triedStandIns = new Candidate[homeStandIns.length];
    this.shortlists =
        IntStream.rangeClosed(0, most).mapToObj(changes -> new Shortlist(width)).toList();
  }

  /**
   * The best session found for each number of changes that leads anywhere, fewest changes first.
   * The first is the given session, perhaps with better modifications.
   *
   * @param stopped asked now and then whether to end with what there is
   */
  List<Near> best(BooleanSupplier stopped) {
    score.compute(home);
    add(home, homeStandIns);
    if (followers != null) {
      cast.choose(home, new Candidate[homeStandIns.length], home, triedStandIns);
      add(home, triedStandIns.clone());
    }
    for (int changes = 0; changes <= most; changes++) {
      lookAround(shortlists.get(changes), looks(changes), stopped);
    }
    List<Near> best = new ArrayList<>();
    for (Shortlist shortlist : shortlists) {
      shortlist.best().map(this::recast).ifPresent(best::add);
    }
    return Collections.unmodifiableList(best);
  }

  /** How many sessions are looked around from; few at last, where changes can only be traded. */
  private int looks(int changes) {
    if (changes < most) {
      return width;
    }
    return most < 2 ? 0 : Math.min(width, TRADED);
  }

  private void lookAround(Shortlist shortlist, int looks, BooleanSupplier stopped) {
    for (int looked = 0; looked < looks && !stopped.getAsBoolean(); looked++) {
      Optional<Near> near = shortlist.next();
      if (near.isEmpty()) {
        return;
      }
      look(near.get(), looked);
    }
  }

  /** How many changes were tried. */
  long tries() {
    return tries;
  }

  private void look(Near from, int looked) {
    score.compute(from.places());
    steps.singles(from.places(), change -> attempt(from, change));
    if (most - from.changes() >= 2) {
      steps.swaps(from.places(), change -> attempt(from, change));
      if (looked < PAIRED && from.changes() < most) {
        steps.pairs(from.places(), change -> attempt(from, change));
      }
    }
  }

  private void attempt(Near from, Change change) {
    System.arraycopy(from.places(), 0, tried, 0, tried.length);
    change.exchange(tried);
    int changes = FewChanges.count(home, tried, facts.perSuperset());
    change.exchange(tried);
    if (changes > most) {
      return;
    }
    tries++;
    score.tryOut(change);
    // Followers only take points away.
    if (!shortlists.get(changes).takes(Near.energy(score.hard(), score.medium(), score.soft()))) {
      return;
    }
    change.exchange(tried);
    if (followers != null) {
      cast.choose(from.places(), from.standIns(), tried, triedStandIns);
    }
    add(tried.clone(), triedStandIns.clone());
    change.exchange(tried);
  }

  /** Adds the session that was worked out last. */
  private void add(Candidate[] places, Candidate[] standIns) {
    Near near = near(places, standIns);
    shortlists.get(near.changes()).add(near);
  }

  private Near near(Candidate[] places, Candidate[] standIns) {
    int changes = FewChanges.count(home, places, facts.perSuperset());
    if (followers == null) {
      return new Near(changes, places, standIns, score.hard(), score.medium(), score.soft());
    }
    followers.compute(places, standIns);
    return new Near(
        changes,
        places,
        standIns,
        score.hard() + followers.hard(),
        score.medium() + followers.medium(),
        score.soft() + followers.soft());
  }

  /** The same session with better modifications, as far as changing one at a time leads. */
  private Near recast(Near found) {
    if (followers == null) {
      return found;
    }
    score.compute(found.places());
    Near best = found;
    for (boolean better = true; better; ) {
      better = false;
      for (int standIn = 0; standIn < found.standIns().length; standIn++) {
        Candidate main = found.places()[standIn % home.length];
        int track = standIn / home.length;
        if (main == null || !main.isUnsuited(track)) {
          continue;
        }
        for (Candidate other : ranking.of(main, track).candidates()) {
          Candidate[] standIns = best.standIns().clone();
          standIns[standIn] = other;
          tries++;
          Near next = near(best.places(), standIns);
          if (next.energy() > best.energy()) {
            best = next;
            better = true;
          }
        }
      }
    }
    return best;
  }
}
