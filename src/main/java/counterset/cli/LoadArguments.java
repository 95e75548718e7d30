package counterset.cli;

import counterset.journal.Lift;
import counterset.json.Shown;
import counterset.spelling.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads loads as typed: {@code goblet-squat=10kgx14,10kgx12}. */
final class LoadArguments {

  private static final Pattern SET =
      Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?) ?kg ?[xX\u00d7] ?([0-9]{1,4})");
  private static final double HEAVIEST = 1000;
  private static final int FEW = 60;
  private static final int MOST_REPS = 1000;

  private final Collection<String> known;
  private final String where;
  private final List<String> faults;
  private final Map<String, Integer> sets = new HashMap<>();
  private final List<Lift> lifts = new ArrayList<>();

  /**
   * A reader.
   *
   * @param known the ids of exercises that may be named
   * @param where where they come from, as messages say it
   * @param faults where to add what is wrong
   */
  LoadArguments(Collection<String> known, String where, List<String> faults) {
    this.known = known;
    this.where = where;
    this.faults = faults;
  }

  /** The sets of all arguments; those of one exercise count on. */
  List<Lift> read(List<String> arguments) {
    arguments.forEach(this::argument);
    return lifts;
  }

  private void argument(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      faults.add(
          "--load ("
              + Shown.of(text)
              + ") must be an exercise and its sets, such as goblet-squat=10kgx14.");
      return;
    }
    String exercise = text.substring(0, equals).strip();
    if (!known.contains(exercise)) {
      faults.add(
          "--load: the exercise ("
              + Shown.of(exercise)
              + ") is not in "
              + where
              + "."
              + remedy(exercise));
    }
    for (String set : text.substring(equals + 1).split(",", -1)) {
      set(exercise, set.strip());
    }
  }

  private String remedy(String exercise) {
    String near = Nearest.maybe(exercise, known);
    return near.isEmpty() && known.size() <= FEW
        ? " There are: " + String.join(", ", known) + "."
        : near;
  }

  private void set(String exercise, String text) {
    Matcher matcher = SET.matcher(text);
    double kg = matcher.matches() ? Double.parseDouble(matcher.group(1)) : 0;
    int reps = matcher.matches() ? Integer.parseInt(matcher.group(2)) : 0;
    if (kg <= 0 || kg > HEAVIEST || reps < 1 || reps > MOST_REPS) {
      faults.add(
          "--load "
              + Shown.of(exercise)
              + ": the set ("
              + Shown.of(text)
              + ") must be kilograms and repetitions, such as 10kgx14 or 7.5kgx12.");
      return;
    }
    lifts.add(new Lift(exercise, kg, reps, sets.merge(exercise, 1, Integer::sum)));
  }
}
