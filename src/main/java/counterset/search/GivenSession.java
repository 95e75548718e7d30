package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.score.Lineup;
import counterset.timeline.SessionLength;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A session that others are to be made of. What the clock has no room for is left off at the end,
 * unless that makes it worse.
 */
final class GivenSession {

  private final Plan plan;
  private final Catalogue catalogue;
  private final String version;
  private final Surroundings surroundings;
  private final Session session;
  private final Worth worth;

  GivenSession(Plan plan, Catalogue catalogue, String version) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.version = version;
    this.surroundings = new Surroundings(plan.problem(), catalogue);
    Session whole = plan.session();
    Session fitted = fitted(whole);
    Worth wholeWorth = worth(whole);
    Worth fittedWorth = worth(fitted);
    boolean better = fittedWorth.compareTo(wholeWorth) > 0;
    this.session = better ? fitted : whole;
    this.worth = better ? fittedWorth : wholeWorth;
  }

  private Session fitted(Session whole) {
    int fit = SessionLength.supersetsThatFit(problem().clock(), problem().minutes());
    List<Superset> supersets = whole.supersets();
    if (supersets.size() <= fit) {
      return whole;
    }
    return surroundings.renewed(
        whole,
        supersets.subList(0, fit),
        whole.modifications().stream().map(track -> upTo(fit, track)).toList());
  }

  private static Map<At, Exercise> upTo(int superset, Map<At, Exercise> track) {
    Map<At, Exercise> within = new LinkedHashMap<>();
    track.forEach(
        (at, exercise) -> {
          if (at.superset() <= superset) {
            within.put(at, exercise);
          }
        });
    return within;
  }

  Problem problem() {
    return plan.problem();
  }

  /** It, to be searched from. */
  Lineup lineup() {
    return Scoring.lineup(problem(), session, catalogue);
  }

  /** It, without a change. */
  Reworked unchanged() {
    return new Reworked(0, session, worth);
  }

  /** What another line-up makes of it. */
  Reworked reworked(int changes, Lineup lineup) {
    List<Superset> supersets = lineup.supersets();
    int size = supersets.size();
    while (size > session.supersets().size() && supersets.get(size - 1).exercises().isEmpty()) {
      size--;
    }
    Session renewed =
        surroundings.renewed(session, supersets.subList(0, size), lineup.modifications());
    return new Reworked(changes, renewed, worth(renewed));
  }

  private Worth worth(Session of) {
    List<Match> matches = Scoring.matches(Scoring.lineup(problem(), of, catalogue));
    PlanScore score = Scoring.score(problem(), matches);
    return new Worth(score.hard(), score.medium(), score.soft());
  }

  /** A plan of what was found. */
  Plan plan(Reworked found, Limit limit, long tries, boolean complete) {
    SolverNote note = new SolverNote(problem().seed(), limit.name(), version, tries, complete);
    Plan made = new SessionPlanner(catalogue, version).score(problem(), found.session(), note);
    return plan.bound().map(made::withBound).orElse(made);
  }
}
