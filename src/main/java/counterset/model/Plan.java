package counterset.model;

import java.util.List;
import java.util.Optional;

/**
 * A session with its clock, its score and all that follows from it.
 *
 * @param problem what was asked, with every default filled in
 * @param kinds what the exercises of each superset are to each other, by superset
 * @param timeline contiguous intervals from 0 to the end
 * @param changeovers between the work intervals, in order, those of no seconds included
 * @param coverage by target, in the order of the problem
 * @param fetch what to fetch, in the order of its first use
 * @param matches every match of every constraint
 * @param tracks by track, in the order of the problem's tracks; empty in the plan of a track itself
 * @param cautions plain sentences, the usual ones and those of the limitations
 * @param bound how good any session can be, if that was asked for
 */
public record Plan(
    Problem problem,
    Session session,
    List<SupersetKind> kinds,
    List<Interval> timeline,
    List<Changeover> changeovers,
    List<TargetCoverage> coverage,
    List<Fetch> fetch,
    Totals totals,
    PlanScore score,
    List<Match> matches,
    List<String> cautions,
    List<Track> tracks,
    SolverNote solver,
    Optional<Bound> bound) {

  public Plan {
    kinds = List.copyOf(kinds);
    timeline = List.copyOf(timeline);
    changeovers = List.copyOf(changeovers);
    coverage = List.copyOf(coverage);
    fetch = List.copyOf(fetch);
    matches = List.copyOf(matches);
    cautions = List.copyOf(cautions);
    tracks = List.copyOf(tracks);
  }

  /** Whether it keeps every rule and has any work. */
  public boolean canBeLed() {
    return score.feasible() && totals.supersets() > 0;
  }

  /** The same plan on another clock that has the same length. */
  public Plan withTimeline(List<Interval> other) {
    return with(other, solver, bound);
  }

  /** The same plan with another note of how it was found. */
  public Plan withSolver(SolverNote other) {
    return with(timeline, other, bound);
  }

  /** The same plan with how good any session can be. */
  public Plan withBound(Bound limit) {
    return with(timeline, solver, Optional.of(limit));
  }

  private Plan with(List<Interval> clock, SolverNote note, Optional<Bound> limit) {
    return new Plan(
        problem,
        session,
        kinds,
        clock,
        changeovers,
        coverage,
        fetch,
        totals,
        score,
        matches,
        cautions,
        tracks,
        note,
        limit);
  }
}
