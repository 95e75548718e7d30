package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Problem;
import counterset.score.Constraint;
import counterset.score.Dislikes;
import counterset.score.EasyWork;
import counterset.score.EffortClass;
import counterset.score.Known;
import counterset.score.LastResort;
import counterset.score.Likes;
import counterset.score.Merit;
import counterset.score.NotHard;
import counterset.score.OffTarget;
import counterset.score.PartialRange;
import counterset.score.Softer;
import counterset.score.TooEasy;
import counterset.score.Unloaded;
import counterset.score.UsedRecently;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

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

  /** Its points; what a one-sided exercise costs at its place it costs at both. */
  long points(Choice choice) {
    Exercise exercise = choice.exercise();
    long points = -choice.positions() * ofPlace(choice.exercise(), choice.merit());
    if (problem.level() == 3 || exercise.needs().stream().noneMatch(this::isLoad)) {
      points -= (long) Math.max(0, problem.level() - exercise.level()) * weights.of(TooEasy.class);
    }
    points -= (long) recency(exercise) * weights.of(UsedRecently.class);
    if (Problem.names(problem.likes(), exercise)) {
      points += weights.of(Likes.class);
    }
    if (Problem.names(problem.dislikes(), exercise)) {
      points -= weights.of(Dislikes.class);
    }
    return points;
  }

  /** What is held or worn, unless it is a dumbbell or kettlebell to lean on. */
  private boolean isLoad(Need need) {
    boolean placed =
        Set.of(EquipmentKind.PLACED, EquipmentKind.FIXED)
            .contains(catalogue.equipment().get(need.equipment()).kind());
    boolean leanedOn =
        need.load().isEmpty() && Set.of("dumbbell", "kettlebell").contains(need.equipment());
    return !placed && !leanedOn;
  }

  private long ofPlace(Exercise exercise, Merit merit) {
    return rarity(exercise, merit) * cost(true, Known.class)
        + cost(merit.offTarget(), OffTarget.class)
        + cost(merit.standing() == 1, LastResort.class)
        + cost(merit.effort() == EffortClass.EASY, EasyWork.class)
        + cost(problem.level() == 3 && merit.effort() != EffortClass.HARD, NotHard.class)
        + merit.softer() * cost(true, Softer.class)
        + cost(merit.partial(), PartialRange.class)
        + merit.unloaded() * cost(true, Unloaded.class);
  }

  /** 5 for no staple; of a staple 2 named by 3 lists or fewer, 1 by 6 or fewer. */
  private static int rarity(Exercise exercise, Merit merit) {
    int lists = exercise.standingSources().size();
    int staple = lists <= 3 ? 2 : lists <= 6 ? 1 : 0;
    return merit.standing() == 2 ? 5 : merit.standing() == 3 ? staple : 0;
  }

  private long cost(boolean is, Class<? extends Constraint> constraint) {
    return is ? weights.of(constraint) : 0;
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
