package counterset.cli;

import counterset.explain.UnsuitedWords;
import counterset.json.BadRequest;
import counterset.json.Shown;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.review.SwapChoices;
import counterset.review.SwapWords;
import counterset.search.Replacement;
import counterset.spelling.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the replacement that {@code --take} names, or says why it cannot be taken. */
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
    Exercise exercise = named(written);
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

  /** Why a known exercise cannot be taken. */
  List<String> refusal(String written) {
    Exercise exercise = named(written);
    SwapWords words = new SwapWords(from, at, catalogue);
    Optional<Replacement> breaking = choices.breaking(exercise);
    if (breaking.isEmpty()) {
      String reason = words.reason(exercise);
      boolean suits = UnsuitedWords.of(exercise, from.problem(), catalogue).isEmpty();
      return List.of(suits ? reason : reason + " Maybe leave out --take to see what can.");
    }
    List<String> lines = words.brokenRules(exercise, choices.with(breaking.get()));
    lines.add(
        "Maybe add --reflow, which plans the rest around it, or take one that is listed without"
            + " --take.");
    return lines;
  }

  /**
   * The exercise of an id or a name.
   *
   * @throws BadRequest if there is none, with the nearest names
   */
  private Exercise named(String written) {
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
                    exercise.names().stream().map(SwapTaking::plain).anyMatch(wanted::equals))
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
}
