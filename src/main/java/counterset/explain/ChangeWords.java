package counterset.explain;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.List;
import java.util.Optional;

/** Which places of a session hold something else than before. */
public final class ChangeWords {

  private ChangeWords() {}

  /** One line a place: {@code 3B: Goblet squat instead of Squat jump}. */
  public static List<String> of(Plan from, Plan to, List<At> places) {
    return places.stream().map(at -> line(from, to, at)).toList();
  }

  private static String line(Plan from, Plan to, At at) {
    Optional<Exercise> before = standing(from, at);
    Optional<Exercise> after = standing(to, at);
    if (after.isEmpty()) {
      return at + ": nothing instead of " + before.map(Exercise::name).orElse("nothing");
    }
    String sides = alone(to, at) ? ", both sides," : "";
    return at
        + ": "
        + after.get().name()
        + sides
        + before.map(it -> " instead of " + it.name()).orElse(" where nothing was");
  }

  private static boolean alone(Plan plan, At at) {
    return plan.session().supersets().stream()
        .anyMatch(it -> it.number() == at.superset() && it.isUnilateral());
  }

  private static Optional<Exercise> standing(Plan plan, At at) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == at.superset())
        .map(Superset::exercises)
        .filter(exercises -> at.position() < exercises.size())
        .map(exercises -> exercises.get(at.position()))
        .findFirst();
  }
}
