package counterset.cli;

import counterset.explain.DifferenceWords;
import counterset.explain.FollowWords;
import counterset.explain.ScoreWords;
import counterset.json.BadRequest;
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
   * @param reflow whether the rest is planned around it, so that it may break a rule for now
   * @throws BadRequest if there is no such number or exercise
   */
  Optional<Replacement> chosen(String written, boolean reflow) {
    if (isNumber(written)) {
      return Optional.of(number(written));
    }
    Exercise exercise = refusals().named(written);
    Optional<Replacement> good = choices.of(exercise);
    return good.isPresent() || !reflow ? good : choices.breaking(exercise);
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
    List<String> lines = brokenRules(exercise, choices.with(breaking.get()));
    lines.add(
        "Maybe add --reflow, which plans the rest around it, or take one that is listed without"
            + " --take.");
    return lines;
  }

  /** Why a replacement cannot be taken although the rest was planned around it. */
  List<String> stillBroken(Replacement chosen, Plan after) {
    List<String> lines = brokenRules(chosen.exercise(), after);
    lines.add(
        "No session around it keeps every rule. Maybe take one that is listed without --take.");
    return lines;
  }

  private List<String> brokenRules(Exercise exercise, Plan after) {
    List<String> lines = new ArrayList<>();
    lines.add(exercise.name() + " at " + at + " would break a rule.");
    DifferenceWords.differences(from, after, catalogue).stream()
        .filter(difference -> difference.level().equals("hard") && difference.points() < 0)
        .forEach(difference -> lines.add("  " + difference.sentence() + "."));
    return lines;
  }

  /** What planning the rest around the choice was good for. */
  static String wonBack(Plan swapped, Plan after) {
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
