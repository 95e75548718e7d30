package counterset.explain;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.Superset;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the followers of the tracks do instead, interval by interval. */
public final class Modifications {

  private final Plan plan;

  /**
   * What one track does instead.
   *
   * @param side which side its followers work with, which may differ from what the others do
   */
  public record Shown(Track track, Exercise exercise, Optional<Side> side) {}

  public Modifications(Plan plan) {
    this.plan = plan;
  }

  /** The modifications beside a work interval, in the order of the tracks. */
  public List<Shown> of(Interval work) {
    List<Shown> shown = new ArrayList<>();
    for (Track track : plan.tracks()) {
      instead(track, work)
          .ifPresent(
              exercise -> shown.add(new Shown(track, exercise, side(track, work, exercise))));
    }
    return shown;
  }

  /** An interval as the followers of a track do it, on the clock of all. */
  public Interval asDoneBy(Track track, Interval interval) {
    return instead(track, interval)
        .map(exercise -> with(interval, Optional.of(exercise), side(track, interval, exercise)))
        .or(() -> move(track, interval))
        .orElse(interval);
  }

  /** Another move of the warm-up or the cool-down, or none where nothing suits. */
  private Optional<Interval> move(Track track, Interval interval) {
    if (interval.kind() != IntervalKind.WARM_UP && interval.kind() != IntervalKind.COOL_DOWN) {
      return Optional.empty();
    }
    List<Interval> all = moves(plan, interval.kind());
    List<Interval> own = moves(track.plan(), interval.kind());
    if (all.size() == own.size()) {
      Interval other = own.get(all.indexOf(interval));
      return Optional.of(with(interval, other.exercise(), other.side()));
    }
    return own.stream().anyMatch(other -> other.exercise().equals(interval.exercise()))
        ? Optional.empty()
        : Optional.of(with(interval, Optional.empty(), Optional.empty()));
  }

  private static List<Interval> moves(Plan plan, IntervalKind kind) {
    return plan.timeline().stream().filter(interval -> interval.kind() == kind).toList();
  }

  private static Interval with(
      Interval interval, Optional<Exercise> exercise, Optional<Side> side) {
    return new Interval(
        interval.start(),
        interval.end(),
        interval.kind(),
        interval.at(),
        interval.round(),
        exercise,
        side);
  }

  private Optional<Exercise> instead(Track track, Interval work) {
    if (work.kind() != IntervalKind.WORK) {
      return Optional.empty();
    }
    At at = work.at().orElseThrow();
    return Optional.ofNullable(track.modifications().get(at))
        .or(() -> Optional.ofNullable(track.modifications().get(firstPlace(at))));
  }

  /** The first place of the exercise at a place: another one for a second side. */
  private At firstPlace(At at) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == at.superset() && superset.isUnilateral())
        .map(Superset::number)
        .findFirst()
        .map(number -> new At(number, 0))
        .orElse(at);
  }

  private static Optional<Side> side(Track track, Interval work, Exercise exercise) {
    return track.plan().timeline().stream()
        .filter(own -> own.kind() == IntervalKind.WORK && own.at().equals(work.at()))
        .filter(own -> own.round().equals(work.round()))
        .filter(own -> own.exercise().equals(Optional.of(exercise)))
        .findFirst()
        .map(Interval::side)
        .orElse(work.side());
  }
}
