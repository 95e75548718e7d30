package counterset.review;

import counterset.explain.DifferenceWords;
import counterset.explain.FollowWords;
import counterset.explain.ScoreWords;
import counterset.explain.UnsuitedWords;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What another exercise at one place does to a plan, and why it cannot stand there.
 *
 * @param plan before the swap
 */
public record SwapWords(Plan plan, At at, Catalogue catalogue) {

  /** Why a known exercise is not among the replacements. */
  public String reason(Exercise exercise) {
    List<String> unsuited = UnsuitedWords.of(exercise, plan.problem(), catalogue);
    if (!unsuited.isEmpty()) {
      return cannot(exercise) + "it " + String.join("; it ", unsuited) + ".";
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

  /** The rules that an exercise would break. */
  public List<String> brokenRules(Exercise exercise, Plan after) {
    List<String> lines = new ArrayList<>();
    lines.add(exercise.name() + " at " + at + " would break a rule.");
    DifferenceWords.differences(plan, after, catalogue).stream()
        .filter(difference -> difference.level().equals("hard") && difference.points() < 0)
        .forEach(difference -> lines.add("  " + difference.sentence() + "."));
    return lines;
  }

  /** What planning the rest around the choice was good for. */
  public static String wonBack(Plan swapped, Plan after) {
    if (after.session().equals(swapped.session())) {
      return "The rest stays as it is: no other change is worth it.";
    }
    int points = after.score().soft() - swapped.score().soft();
    String mended =
        after.score().hard() > swapped.score().hard()
            ? ", and mend what it would have broken"
            : after.score().medium() > swapped.score().medium()
                ? ", and meet a wish that it would have left unmet"
                : "";
    return "The other changes bring " + ScoreWords.points(points) + mended + ".";
  }

  /** What the swap has done, one line each. */
  public List<String> told(Exercise chosen, Plan after) {
    List<String> lines = new ArrayList<>();
    String before = Places.standing(plan, at).map(Exercise::name).orElse("nothing");
    int points = after.score().soft() - plan.score().soft();
    lines.add(
        at
            + ": "
            + chosen.name()
            + " instead of "
            + before
            + ", "
            + ScoreWords.points(points)
            + (Math.abs(points) == 1 ? " point." : " points."));
    FollowWords.of(plan, after, at, catalogue)
        .forEach(clause -> lines.add("  Follows: " + clause + "."));
    DifferenceWords.of(plan, after, catalogue).forEach(line -> lines.add("  " + line + "."));
    return lines;
  }
}
