package counterset.ask;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The days of the week as coaches write them. */
final class DayNames {

  private static final Map<String, DayOfWeek> BY_KEY = byKey();

  private DayNames() {}

  private static Map<String, DayOfWeek> byKey() {
    Map<String, DayOfWeek> days = new HashMap<>();
    for (DayOfWeek day : DayOfWeek.values()) {
      days.put(Keys.of(of(day)), day);
      days.put(Keys.of(of(day).substring(0, 3)), day);
    }
    days.put("thur", DayOfWeek.THURSDAY);
    return Map.copyOf(days);
  }

  /** The full name, with a capital. */
  static String of(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** The day that a word names, abbreviated or not, in the plural or not. */
  static Optional<DayOfWeek> at(Words words, int at) {
    return words.at(at).isWord()
        ? Optional.ofNullable(BY_KEY.get(words.at(at).key()))
        : Optional.empty();
  }

  /** Lets slips be told. */
  static void addTo(Vocabulary vocabulary) {
    for (DayOfWeek day : DayOfWeek.values()) {
      String id = day.name().toLowerCase(Locale.ROOT);
      vocabulary.add(new Term(Kind.DAY, id, of(day)));
      vocabulary.add(new Term(Kind.DAY, id, of(day).substring(0, 3)));
    }
  }
}
