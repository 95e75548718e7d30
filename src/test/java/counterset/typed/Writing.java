package counterset.typed;

import counterset.model.Exercise;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;

/** The ways in which coaches type sessions, for tests to write them. */
enum Writing {
  SLASHES((superset, number) -> lines(String.join(" / ", sided(superset, false)))),
  PLUSES((superset, number) -> lines("- " + String.join("  +  ", sided(superset, false)))),
  NUMBER_LETTER((superset, number) -> labelled(sided(superset, true), number + "%s ", false)),
  LETTER_NUMBER(
      (superset, number) ->
          labelled(sided(superset, true), (char) ('a' + number - 1) + "%s) ", true)),
  HEADINGS(
      (superset, number) ->
          lines("SUPERSET " + number + ":", "* " + String.join("\n* ", sided(superset, true)), "")),
  BLOCKS((superset, number) -> lines(String.join("\n", sided(superset, true)), "")),
  RESTS((superset, number) -> lines(String.join("\n", sided(superset, true)), "rest")),
  SHOUTED(
      (superset, number) ->
          lines(
              "> "
                  + String.join(" / ", sided(superset, false))
                      .toUpperCase(Locale.ROOT)
                      .replace('-', ' '))),
  WINDOWS(
      (superset, number) ->
          "\t"
              + String.join("\u00a0/\u00a0", sided(superset, false)).replace('-', '\u2011')
              + "\r\n");

  private final BiFunction<Superset, Integer, String> superset;

  Writing(BiFunction<Superset, Integer, String> superset) {
    this.superset = superset;
  }

  /** Whether a session can be told from its lines: one has several exercises, or each has one. */
  boolean tells(Session session, int perSuperset) {
    boolean onOneLine = List.of(SLASHES, PLUSES, SHOUTED, WINDOWS).contains(this);
    return !onOneLine
        || perSuperset == 1
        || session.supersets().stream().anyMatch(it -> it.distinct().size() > 1);
  }

  /** A session with all its parts. */
  String of(Session session) {
    StringBuilder text = new StringBuilder();
    part(text, "Warm-up:", session.warmUp());
    text.append("Main part:\n");
    session.supersets().forEach(it -> text.append(superset.apply(it, it.number())));
    part(text, "Cool-down:", session.coolDown());
    return text.toString();
  }

  private static void part(StringBuilder text, String heading, List<Exercise> moves) {
    if (!moves.isEmpty()) {
      text.append("\n").append(heading).append("\n");
      moves.forEach(move -> text.append(move.name()).append("\n"));
      text.append("\n");
    }
  }

  private static String lines(String... lines) {
    return String.join("\n", lines) + "\n";
  }

  private static String labelled(List<String> names, String format, boolean digits) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < names.size(); i++) {
      String position = digits ? String.valueOf(i + 1) : String.valueOf("ABC".charAt(i));
      text.append(format.replace("%s", position)).append(names.get(i)).append("\n");
    }
    return text.toString();
  }

  /** The names of a superset; both sides of a one-sided exercise on one line or on two. */
  private static List<String> sided(Superset superset, boolean twoLines) {
    List<String> names = new ArrayList<>();
    List<Exercise> exercises = superset.exercises();
    if (superset.isUnilateral() && !twoLines) {
      return List.of(exercises.get(0).name() + ", each side");
    }
    for (int i = 0; i < exercises.size(); i++) {
      boolean sided = exercises.get(i).isUnilateral();
      names.add(exercises.get(i).name() + (sided ? i == 0 ? ", left" : ", right" : ""));
    }
    return names;
  }
}
