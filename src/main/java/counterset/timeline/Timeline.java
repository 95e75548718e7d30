package counterset.timeline;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Intervals;
import counterset.model.Session;
import counterset.model.Side;
import counterset.timeline.Changeovers.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The clock of a session.
 *
 * @param intervals contiguous, from 0 to the end
 * @param changeovers between the work intervals, in order
 * @param unused left-over seconds of the cap that no rest could take; negative if the session is
 *     longer than its cap
 */
public record Timeline(List<Interval> intervals, List<Changeover> changeovers, int unused) {

  public Timeline {
    intervals = List.copyOf(intervals);
    changeovers = List.copyOf(changeovers);
  }

  /** Sets the clock for a session within a cap. */
  public static Timeline of(Session session, Intervals clock, int minutes, Catalogue catalogue) {
    List<Changeover> changeovers = Changeovers.of(session, clock, catalogue);
    List<Step> steps = Changeovers.steps(session, clock);
    int leftOver = 60 * minutes - plainSeconds(session, clock);
    int[] extra = LeftOver.share(leftOver, steps, changeovers);
    Builder builder = new Builder();
    builder.add(clock.getReady(), IntervalKind.GET_READY);
    builder.addMoves(session.warmUp(), clock.warmUp(), IntervalKind.WARM_UP);
    for (int i = 0; i < steps.size(); i++) {
      if (i > 0) {
        builder.pause(steps.get(i - 1), steps.get(i), clock, extra[i - 1]);
      }
      builder.work(steps.get(i), clock, session);
    }
    builder.addMoves(session.coolDown(), clock.coolDown(), IntervalKind.COOL_DOWN);
    return new Timeline(builder.intervals, changeovers, 60 * minutes - builder.now);
  }

  /** The seconds of a session as it stands, before left-over seconds lengthen its rests. */
  public static int plainSeconds(Session session, Intervals clock) {
    List<Step> steps = Changeovers.steps(session, clock);
    int seconds =
        clock.getReady() + clock.warmUp() + clock.coolDown() + steps.size() * clock.work();
    for (int i = 1; i < steps.size(); i++) {
      seconds += isInside(steps.get(i - 1), steps.get(i)) ? clock.between() : clock.rest();
    }
    return seconds;
  }

  /** When the session ends. */
  public int end() {
    return intervals.isEmpty() ? 0 : intervals.get(intervals.size() - 1).end();
  }

  private static boolean isInside(Step last, Step next) {
    return last.at().superset() == next.at().superset() && last.round() == next.round();
  }

  /** Puts one interval behind the other, so that there can be no gap. */
  private static final class Builder {

    private final List<Interval> intervals = new ArrayList<>();
    private int now;

    void add(int seconds, IntervalKind kind) {
      add(seconds, kind, Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
    }

    /** An interval of no seconds is left out. */
    private void add(
        int seconds,
        IntervalKind kind,
        Optional<At> at,
        OptionalInt round,
        Optional<Exercise> what,
        Optional<Side> side) {
      if (seconds > 0) {
        intervals.add(new Interval(now, now + seconds, kind, at, round, what, side));
        now += seconds;
      }
    }

    void work(Step step, Intervals clock, Session session) {
      Side side = Sideways.of(step, session);
      add(
          clock.work(),
          IntervalKind.WORK,
          Optional.of(step.at()),
          round(step, clock),
          Optional.of(step.exercise()),
          Optional.of(side));
    }

    void pause(Step last, Step next, Intervals clock, int extra) {
      boolean inside = isInside(last, next);
      add(
          (inside ? clock.between() : clock.rest()) + extra,
          inside ? IntervalKind.SWITCH : IntervalKind.REST,
          Optional.of(last.at()),
          round(last, clock),
          Optional.empty(),
          Optional.empty());
    }

    /**
     * Warm-up or cool-down moves, each for its own seconds. What remains of the block is free: at
     * its beginning in a warm-up, at its end in a cool-down.
     */
    void addMoves(List<Exercise> moves, int blockSeconds, IntervalKind kind) {
      int own = moves.stream().mapToInt(Builder::ownSeconds).sum();
      int free = Math.max(0, blockSeconds - own);
      add(kind == IntervalKind.WARM_UP ? free : 0, kind);
      int end = now + Math.min(own, blockSeconds);
      for (Exercise move : moves) {
        addMove(move, Math.min(ownSeconds(move), end - now), kind);
      }
      add(kind == IntervalKind.COOL_DOWN ? free : 0, kind);
    }

    private void addMove(Exercise move, int seconds, IntervalKind kind) {
      if (move.isUnilateral()) {
        addMove(move, seconds - seconds / 2, kind, Side.LEFT);
        addMove(move, seconds / 2, kind, Side.RIGHT);
      } else {
        addMove(move, seconds, kind, Sideways.whole(move));
      }
    }

    private void addMove(Exercise move, int seconds, IntervalKind kind, Side side) {
      add(
          seconds,
          kind,
          Optional.empty(),
          OptionalInt.empty(),
          Optional.of(move),
          Optional.of(side));
    }

    private static int ownSeconds(Exercise move) {
      return move.seconds().orElse(0);
    }

    private static OptionalInt round(Step step, Intervals clock) {
      return clock.rounds() > 1 ? OptionalInt.of(step.round()) : OptionalInt.empty();
    }
  }
}
