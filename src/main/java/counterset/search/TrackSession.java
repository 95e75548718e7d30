package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.score.ExerciseFilter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A session as the followers of one track do it. What does not suit them and has no modification
 * stays, so that the fault shows.
 */
final class TrackSession {

  private final Catalogue catalogue;
  private final Set<String> limitations;
  private final Map<At, Exercise> given;
  private final Map<At, Exercise> applied = new LinkedHashMap<>();
  private final Session session;

  /**
   * Works it out.
   *
   * @param problem of the whole class
   * @param followers what the track's followers ask for
   * @param track from 0
   */
  TrackSession(Session main, Problem problem, Problem followers, int track, Catalogue catalogue) {
    this.catalogue = catalogue;
    this.limitations = problem.tracks().get(track);
    this.given = track < main.modifications().size() ? main.modifications().get(track) : Map.of();
    ExerciseFilter filter = new ExerciseFilter(followers, catalogue);
    session =
        new Session(
            moves(main.warmUp(), filter.part(Part.WARM_UP)),
            main.supersets().stream().map(this::superset).toList(),
            moves(main.coolDown(), filter.part(Part.COOL_DOWN)));
  }

  Session session() {
    return session;
  }

  /** The modifications that were needed, by place. */
  Map<At, Exercise> applied() {
    return applied;
  }

  private boolean suits(Exercise exercise) {
    return limitations.stream().allMatch(id -> catalogue.limitations().get(id).allows(exercise));
  }

  private Superset superset(Superset main) {
    List<Exercise> exercises = new ArrayList<>();
    for (int position = 0; position < main.exercises().size(); position++) {
      Exercise exercise = main.exercises().get(position);
      int first = exercise.isUnilateral() ? main.exercises().indexOf(exercise) : position;
      At at = new At(main.number(), first);
      if (!suits(exercise) && given.containsKey(at)) {
        applied.put(at, given.get(at));
        exercises.add(given.get(at));
      } else {
        exercises.add(exercise);
      }
    }
    return new Superset(main.number(), exercises);
  }

  /** The moves of a warm-up or cool-down; one that does not suit gives way to another as long. */
  private List<Exercise> moves(List<Exercise> main, List<Exercise> possible) {
    List<Exercise> moves = new ArrayList<>();
    for (Exercise move : main) {
      if (suits(move)) {
        moves.add(move);
      } else {
        instead(move, possible, main, moves).ifPresent(moves::add);
      }
    }
    return moves;
  }

  private static Optional<Exercise> instead(
      Exercise move, List<Exercise> possible, List<Exercise> main, List<Exercise> sofar) {
    return possible.stream()
        .filter(other -> other.seconds().equals(move.seconds()))
        .min(
            (a, b) ->
                Integer.compare(
                    strangeness(a, move, main, sofar), strangeness(b, move, main, sofar)));
  }

  private static int strangeness(
      Exercise other, Exercise move, List<Exercise> main, List<Exercise> sofar) {
    boolean repeated = main.contains(other) || sofar.contains(other);
    boolean sharesMuscle = other.primary().stream().anyMatch(move.primary()::contains);
    return (repeated ? 4 : 0)
        + (sharesMuscle ? 0 : 2)
        + (other.position() == move.position() ? 0 : 1);
  }
}
