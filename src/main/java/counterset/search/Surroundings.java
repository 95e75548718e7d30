package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.score.ExerciseFilter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Puts a warm-up before the supersets and a cool-down behind them. */
final class Surroundings {

  private final Problem problem;
  private final Catalogue catalogue;
  private final ExerciseFilter filter;

  Surroundings(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.filter = new ExerciseFilter(problem, catalogue);
  }

  /** A session without tracks. */
  Session around(List<Superset> supersets) {
    return around(supersets, List.of());
  }

  /**
   * A session.
   *
   * @param modifications by track
   */
  Session around(List<Superset> supersets, List<Map<At, Exercise>> modifications) {
    List<Exercise> work =
        supersets.stream().flatMap(superset -> superset.distinct().stream()).toList();
    return new Session(
        chosen(Part.WARM_UP, moves -> new WarmUp(problem, catalogue, moves).before(work)),
        supersets,
        chosen(Part.COOL_DOWN, moves -> new CoolDown(problem, moves).after(work)),
        modifications);
  }

  /**
   * A session that was changed, with a warm-up and cool-down chosen anew for it; one that somebody
   * changed by hand stays.
   *
   * @param before the session with its warm-up and cool-down
   */
  Session renewed(Session before, List<Superset> supersets, List<Map<At, Exercise>> modifications) {
    Session own = around(before.supersets());
    Session renewed = around(supersets, modifications);
    return new Session(
        own.warmUp().equals(before.warmUp()) ? renewed.warmUp() : before.warmUp(),
        supersets,
        own.coolDown().equals(before.coolDown()) ? renewed.coolDown() : before.coolDown(),
        modifications);
  }

  /** Moves that suit all tracks, if they fill the time as well as any. */
  private List<Exercise> chosen(Part part, UnaryOperator<List<Exercise>> choice) {
    List<Exercise> moves = filter.part(part);
    List<Exercise> own = choice.apply(moves);
    if (problem.tracks().isEmpty()) {
      return own;
    }
    List<Exercise> forAll = choice.apply(moves.stream().filter(this::suitsAllTracks).toList());
    return seconds(forAll) >= seconds(own) ? forAll : own;
  }

  private boolean suitsAllTracks(Exercise move) {
    return problem.tracks().stream()
        .flatMap(Set::stream)
        .allMatch(id -> catalogue.limitations().get(id).allows(move));
  }

  private static int seconds(List<Exercise> moves) {
    return moves.stream().mapToInt(move -> move.seconds().orElse(0)).sum();
  }
}
