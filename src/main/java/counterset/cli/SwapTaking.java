package counterset.cli;

import counterset.explain.DifferenceWords;
import counterset.explain.FollowWords;
import counterset.explain.ScoreWords;
import counterset.json.Shown;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.solve.Replacement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the replacement that a coach takes, and tells what it does. */
record SwapTaking(Plan from, At at, Catalogue catalogue, SwapChoices choices) {

  /**
   * The replacement of a number, id or name; empty if the exercise is known and cannot stand there.
   *
   * @throws BadRequest if there is no such number or exercise
   */
  Optional<Replacement> chosen(String written) {
    return isNumber(written) ? Optional.of(number(written)) : choices.of(refusals().named(written));
  }

  private static boolean isNumber(String written) {
    return written.strip().matches("[+-]?[0-9]+");
  }

  private Replacement number(String written) {
    String digits = written.strip().replaceFirst("^\\+?0*(?=[0-9])", "");
    int number = digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) : 0;
    if (choices.size() == 0) {
      throw new BadRequest(
          "--take ("
              + Shown.of(written)
              + "): nothing that keeps every rule can stand at "
              + at
              + ". Maybe swap another place.");
    }
    if (number < 1 || number > choices.size()) {
      throw new BadRequest(
          "--take ("
              + Shown.of(written)
              + ") must be from 1 to "
              + choices.size()
              + ", or the id or name of an exercise. --all lists them.");
    }
    return choices.number(number);
  }

  private SwapRefusal refusals() {
    return new SwapRefusal(from, at, catalogue);
  }

  /** Why a known exercise cannot be taken. */
  List<String> refusal(String written) {
    Exercise exercise = refusals().named(written);
    Optional<Replacement> breaking = choices.breaking(exercise);
    if (breaking.isEmpty()) {
      return List.of(refusals().reason(exercise));
    }
    List<String> lines = new ArrayList<>();
    lines.add(exercise.name() + " at " + at + " would break a rule.");
    DifferenceWords.differences(from, choices.with(breaking.get()), catalogue).stream()
        .filter(difference -> difference.level().equals("hard") && difference.points() < 0)
        .forEach(difference -> lines.add("  " + difference.sentence() + "."));
    lines.add("Maybe take one that keeps every rule: without --take they are listed.");
    return lines;
  }

  /** What the swap has done, one line each. */
  List<String> told(Replacement chosen, Plan after) {
    List<String> lines = new ArrayList<>();
    String before = Places.standing(from, at).map(Exercise::name).orElse("nothing");
    int points = after.score().soft() - from.score().soft();
    lines.add(
        at
            + ": "
            + chosen.exercise().name()
            + " instead of "
            + before
            + ", "
            + ScoreWords.points(points)
            + (Math.abs(points) == 1 ? " point." : " points."));
    FollowWords.of(from, after, at, catalogue)
        .forEach(clause -> lines.add("  Follows: " + clause + "."));
    DifferenceWords.of(from, after, catalogue).forEach(line -> lines.add("  " + line + "."));
    return lines;
  }
}
