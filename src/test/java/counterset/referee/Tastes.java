package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.score.Dislikes;
import counterset.score.Likes;
import counterset.score.TooEasy;
import counterset.score.Unloaded;
import counterset.score.UsedRecently;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What an exercise is worth by itself, wherever it stands. */
final class Tastes {

  private final Problem problem;
  private final Catalogue catalogue;
  private final Weights weights;

  Tastes(Problem problem, Catalogue catalogue, Weights weights) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.weights = weights;
  }

  /** Its points; a one-sided exercise leaves equipment lying in two positions. */
  long points(Exercise exercise) {
    long points = 0;
    points -= (long) Math.max(0, problem.level() - exercise.level()) * weights.of(TooEasy.class);
    points -= (long) recency(exercise) * weights.of(UsedRecently.class);
    if (Problem.names(problem.likes(), exercise)) {
      points += weights.of(Likes.class);
    }
    if (Problem.names(problem.dislikes(), exercise)) {
      points -= weights.of(Dislikes.class);
    }
    if (!isLoaded(exercise)) {
      points -= (long) positions(exercise) * weights.of(Unloaded.class);
    }
    return points;
  }

  static int positions(Exercise exercise) {
    return exercise.isUnilateral() ? 2 : 1;
  }

  /** What carries the client counts only if there is nothing to lift, a mere comfort never. */
  private boolean isLoaded(Exercise exercise) {
    boolean lifts = problem.equipment().stream().anyMatch(owned -> !of(owned).support());
    List<String> loads =
        problem.equipment().stream()
            .filter(owned -> of(owned).comfortIn().isEmpty() || !of(owned).support())
            .filter(owned -> of(owned).support() != lifts)
            .map(Owned::id)
            .toList();
    return loads.isEmpty()
        || exercise.needs().stream().map(Need::equipment).anyMatch(loads::contains);
  }

  private Equipment of(Owned owned) {
    return catalogue.equipment().get(owned.id());
  }

  /** 20 for yesterday or today, falling linearly to 0 at 14 days, rounded half up. */
  private int recency(Exercise exercise) {
    Optional<LocalDate> last =
        problem.recent().stream().map(Done::date).max(Comparator.naturalOrder());
    int most = 0;
    for (Done done : problem.recent()) {
      boolean same =
          done.exercises().stream()
              .map(
                  id ->
                      catalogue.exercises().containsKey(id)
                          ? catalogue.exercises().get(id).root()
                          : id)
              .anyMatch(exercise.root()::equals);
      LocalDate today = problem.date().orElseGet(() -> last.orElseThrow().plusDays(1));
      long days = ChronoUnit.DAYS.between(done.date(), today);
      if (same && days >= 0 && days < 14) {
        most = Math.max(most, Math.toIntExact((2 * 20 * (14 - Math.max(1, days)) + 13) / 26));
      }
    }
    return most;
  }
}
