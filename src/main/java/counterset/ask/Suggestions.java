package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Limitation;
import counterset.spelling.Slips;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What to say about a phrase that is not understood: the nearest known words, or all that is known.
 */
final class Suggestions {

  private static final int LONGEST_WINDOW = 4;
  private static final int MOST_WORDS = 40;
  private static final int MOST_WORDS_LOOSELY = 4;
  private static final int MOST_SHOWN = 4;
  private static final double SPREAD = 0.03;
  private static final double NEAREST = 0.5;
  private static final int LEAST_TO_COMPARE = 7;
  private static final Set<Kind> SILENT = EnumSet.of(Kind.FILLER, Kind.NOT);
  private static final Set<Kind> PLURAL =
      EnumSet.of(Kind.EQUIPMENT, Kind.EXERCISE, Kind.FAMILY, Kind.PATTERN);

  /** A name, the share of its letters that differ, and whether the text looks like a slip of it. */
  private record Near(String name, double apart, boolean slip) {}

  private final Catalogue catalogue;
  private final Vocabulary vocabulary;

  Suggestions(Catalogue catalogue, Vocabulary vocabulary) {
    this.catalogue = catalogue;
    this.vocabulary = vocabulary;
  }

  String message(Words words, int from, int to) {
    String special = special(words, from, to);
    if (special != null) {
      return special;
    }
    List<Near> near = near(words, from, Math.min(to, from + MOST_WORDS));
    if (near.isEmpty()) {
      return "Not understood. " + known();
    }
    String names =
        near.stream().map(it -> '"' + it.name() + '"').collect(Collectors.joining(" or "));
    return near.get(0).slip()
        ? "Not understood; maybe " + names + "?"
        : "Not understood, or not in the catalogue; the nearest known: " + names + ".";
  }

  private static String special(Words words, int from, int to) {
    for (int i = from; i < to; i++) {
      if (words.is(i, "-") && words.at(i - 1).isNumber()) {
        return "Ranges are not read. Name one number, or masses such as \"6 and 10 kg\".";
      }
      if (words.at(i).kind() == Token.Kind.SYMBOL && words.at(i).key().indexOf(',') > 0) {
        return "Write a decimal number with a point, or put a space after the comma.";
      }
    }
    Numeral numeral = Numeral.read(words, from).orElse(null);
    if (numeral != null && numeral.end() + 1 == to && MassList.isUnit(words, numeral.end())) {
      return "Say what has this mass, such as \"8 kg dumbbells\".";
    }
    if (IntStream.range(from, to).noneMatch(i -> words.at(i).isWord() || words.at(i).isNumber())) {
      return "This sign says nothing here. Remove it.";
    }
    if (numeral != null && numeral.end() == to) {
      return "Say what this number is: \"20 min\", \"2 rounds\", \"level 2\", \"8 kg dumbbells\" or \"45/30\".";
    }
    return to == from + 1 && words.is(from, "or") ? "Choose one, or say \"and\"." : null;
  }

  private List<Near> near(Words words, int from, int to) {
    List<Near> near = new ArrayList<>();
    for (int start = from; start < to; start++) {
      StringBuilder text = new StringBuilder();
      for (int i = start; i < Math.min(to, start + LONGEST_WINDOW) && words.at(i).isWord(); i++) {
        text.append(text.isEmpty() ? "" : " ").append(words.at(i).text().toLowerCase(Locale.ROOT));
        if (text.length() >= 3 && text.length() <= 60) {
          add(near, text.toString(), to - from <= MOST_WORDS_LOOSELY && i == start);
        }
      }
    }
    near.sort(
        Comparator.comparing((Near it) -> !it.slip())
            .thenComparingDouble(Near::apart)
            .thenComparing(Near::name));
    double limit = near.isEmpty() || near.get(0).slip() ? 1 : near.get(0).apart() + SPREAD;
    Set<String> seen = new HashSet<>();
    return near.stream()
        .filter(it -> it.slip() == near.get(0).slip() && it.apart() <= limit && seen.add(it.name()))
        .limit(MOST_SHOWN)
        .toList();
  }

  /** Adds the names that are near enough, in the plural if the text looks like one. */
  private void add(List<Near> near, String text, boolean loosely) {
    for (Term term : vocabulary.terms()) {
      if (SILENT.contains(term.kind())) {
        continue;
      }
      String singular = term.name().toLowerCase(Locale.ROOT);
      boolean plural =
          PLURAL.contains(term.kind()) && text.endsWith("s") && !singular.endsWith("s");
      String name = plural ? singular + "s" : singular;
      double longer = Math.max(text.length(), name.length());
      boolean within = text.length() >= 5 && (" " + name + " ").contains(" " + text + " ");
      int slip = Slips.allowed(text, name);
      int most = loosely && longer >= LEAST_TO_COMPARE ? (int) (NEAREST * longer) : slip;
      if (within || Math.abs(text.length() - name.length()) <= most) {
        int distance = Slips.between(text, name);
        if (distance > 0 && (within || distance <= most)) {
          near.add(new Near(name, distance / longer, within || distance <= slip));
        }
      }
    }
  }

  private String known() {
    return "Known equipment: "
        + list(catalogue.equipment().values().stream().map(Equipment::name).toList())
        + "; limitations: "
        + list(catalogue.limitations().values().stream().map(Limitation::name).toList())
        + "; and muscle groups, regions, exercises, minutes, intervals (\"45/30\"), levels and counts.";
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names).toLowerCase(Locale.ROOT);
  }
}
