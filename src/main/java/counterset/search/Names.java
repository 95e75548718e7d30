package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import java.util.List;
import java.util.Locale;

/** Names of the catalogue within a sentence. */
final class Names {

  private final Catalogue catalogue;

  Names(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  String muscle(String id) {
    return lower(catalogue.muscles().get(id).name());
  }

  String limitation(String id) {
    return lower(catalogue.limitations().get(id).name());
  }

  /** {@code dumbbell}, {@code ankle weights}. */
  String equipment(String id) {
    return lower(catalogue.equipment().get(id).name());
  }

  /** {@code a dumbbell}, {@code ankle weights}. */
  String one(String equipment) {
    String name = equipment(equipment);
    return name.endsWith("s") ? name : ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ") + name;
  }

  /** {@code dumbbells}, {@code ankle weights}. */
  String many(String equipment) {
    String name = equipment(equipment);
    return name.endsWith("s") ? name : name + "s";
  }

  /** An exercise by its id; a family or a pattern in the words of its id. */
  String named(String id) {
    Exercise exercise = catalogue.exercises().get(id);
    return exercise == null ? id.replace('-', ' ') : lower(exercise.name());
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** {@code 1 set}, {@code 2 sets}. */
  static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
