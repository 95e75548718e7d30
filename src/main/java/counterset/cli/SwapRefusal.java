package counterset.cli;

import counterset.explain.UnsuitedWords;
import counterset.json.BadRequest;
import counterset.json.Nearest;
import counterset.json.Shown;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Which exercise a coach means to put in, and why it cannot stand where it is wanted. */
record SwapRefusal(Plan plan, At at, Catalogue catalogue) {

  /**
   * The exercise of an id or a name.
   *
   * @throws BadRequest if there is none, with the nearest names
   */
  Exercise named(String written) {
    String wanted = plain(written);
    Set<String> known = new LinkedHashSet<>();
    List<Exercise> main = new ArrayList<>(catalogue.exercises(Part.MAIN));
    catalogue.exercises().values().stream().filter(e -> !main.contains(e)).forEach(main::add);
    for (Exercise exercise : main) {
      if (plain(exercise.id()).equals(wanted) || plain(exercise.name()).equals(wanted)) {
        return exercise;
      }
      known.add(exercise.id());
    }
    List<Exercise> called =
        main.stream()
            .filter(
                exercise ->
                    exercise.names().stream().map(SwapRefusal::plain).anyMatch(wanted::equals))
            .toList();
    if (called.size() == 1) {
      return called.get(0);
    }
    if (!called.isEmpty()) {
      throw new BadRequest(
          "--take ("
              + Shown.of(written)
              + ") may be any of "
              + String.join(", ", called.stream().limit(4).map(Exercise::id).toList())
              + ". Name one of them.");
    }
    throw new BadRequest(
        "--take ("
            + Shown.of(written)
            + ") is neither a number of the list nor a known exercise."
            + Nearest.maybe(wanted.replace(' ', '-'), known));
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ");
  }

  /** Why a known exercise is not among the replacements. */
  String reason(Exercise exercise) {
    List<String> unsuited = UnsuitedWords.of(exercise, plan.problem(), catalogue);
    if (!unsuited.isEmpty()) {
      return cannot(exercise)
          + "it "
          + String.join("; it ", unsuited)
          + ". Maybe leave out --take to see what can.";
    }
    if (Places.standing(plan, at).filter(exercise::equals).isPresent()) {
      return exercise.name() + " stands at " + at + " already. Maybe name another one.";
    }
    Optional<String> where = where(exercise);
    return cannot(exercise)
        + where
            .map(there -> there + ", and nothing comes twice. Maybe swap that place first.")
            .orElse("no partner is left for the other place of the superset.");
  }

  private String cannot(Exercise exercise) {
    return exercise.name() + " cannot stand at " + at + ": ";
  }

  /** It, or another way of doing it. */
  private Optional<String> where(Exercise exercise) {
    for (Superset superset : plan.session().supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        Exercise other = superset.exercises().get(position);
        At place = new At(superset.number(), position);
        if (other.root().equals(exercise.root()) && !place.equals(at)) {
          String it = other.equals(exercise) ? "it" : other.name() + ", another way of doing it,";
          return Optional.of(it + " stands at " + place);
        }
      }
    }
    return Optional.empty();
  }
}
