package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Problem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;

/** What it costs to use again what was used on an earlier date. */
final class Recency {

  private static final int YESTERDAY = 20;
  private static final int FORGOTTEN_AFTER_DAYS = 14;

  private final Problem problem;
  private final Catalogue catalogue;
  private final Optional<LocalDate> today;

  Recency(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    // A plan must not depend on the day it is computed: without a date the session follows the last
    // one done.
    this.today =
        problem
            .date()
            .or(
                () ->
                    problem.recent().stream()
                        .map(Done::date)
                        .max(Comparator.naturalOrder())
                        .map(d -> d.plusDays(1)));
  }

  /**
   * Points for an exercise or a variant of it: 20 for yesterday, falling linearly to 0 at 14 days.
   */
  int points(Exercise exercise) {
    return problem.recent().stream()
        .filter(done -> done.exercises().stream().map(this::root).anyMatch(exercise.root()::equals))
        .mapToInt(done -> points(ChronoUnit.DAYS.between(done.date(), today.orElseThrow())))
        .max()
        .orElse(0);
  }

  private String root(String id) {
    Exercise exercise = catalogue.exercises().get(id);
    return exercise == null ? id : exercise.root();
  }

  private static int points(long days) {
    if (days < 0 || days >= FORGOTTEN_AFTER_DAYS) {
      return 0;
    }
    long age = Math.max(1, days);
    return Math.toIntExact(
        Math.round((double) YESTERDAY * (FORGOTTEN_AFTER_DAYS - age) / (FORGOTTEN_AFTER_DAYS - 1)));
  }
}
