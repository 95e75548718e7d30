package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Track;
import counterset.score.Constraints;
import counterset.score.ExerciseRepeated;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import java.util.List;
import java.util.stream.IntStream;

/** The plan of each track: the session as its followers do it, by itself. */
final class TrackPlans {

  private final Problem problem;
  private final Catalogue catalogue;
  private final SessionFacts facts;
  private final SolverNote note;

  TrackPlans(Catalogue catalogue, SessionFacts facts, SolverNote note) {
    this.problem = facts.problem();
    this.catalogue = catalogue;
    this.facts = facts;
    this.note = note;
  }

  List<Track> of(Session session) {
    return IntStream.range(0, problem.tracks().size())
        .mapToObj(track -> track(session, track))
        .toList();
  }

  private Track track(Session main, int track) {
    Problem followers = followers(track);
    TrackSession own = new TrackSession(main, problem, followers, track, catalogue);
    Lineup lineup = Scoring.lineup(followers, own.session(), catalogue);
    List<Match> matches =
        Scoring.matches(lineup).stream().filter(match -> !isBothIntervals(match, main)).toList();
    Plan plan = new Assembly(followers, catalogue).plan(own.session(), matches, List.of(), note);
    return new Track(List.copyOf(problem.tracks().get(track)), own.applied(), plan);
  }

  /** Whether it is about one modification that fills both intervals of a one-sided exercise. */
  private static boolean isBothIntervals(Match match, Session main) {
    return match.constraint().equals(Constraints.the(ExerciseRepeated.class).id())
        && match.places().stream().map(at -> at.superset()).distinct().count() == 1
        && main.supersets().get(match.places().get(0).superset() - 1).isUnilateral();
  }

  /** What the followers of a track ask for: nothing that it cannot train. */
  private Problem followers(int track) {
    ProblemDraft draft = new ProblemDraft(problem);
    draft.limitations.addAll(problem.tracks().get(track));
    draft.tracks.clear();
    draft.include.clear();
    draft.keep.clear();
    draft.targets.clear();
    for (int target = 0; target < problem.targets().size(); target++) {
      if (facts.canTrain(track, target)) {
        draft.targets.add(problem.targets().get(target));
      }
    }
    if (draft.targets.isEmpty()) {
      draft.targets.addAll(problem.targets());
    }
    return draft.problem();
  }
}
