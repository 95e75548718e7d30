package counterset.model;

import java.util.List;
import java.util.Locale;

/** The little grammar that sentences need. */
public final class English {

  private static final List<String> NUMBERS =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private English() {}

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** {@code 1 item}, {@code 2 items}. */
  public static String count(int number, String noun) {
    return number + " " + (number == 1 ? noun : plural(noun));
  }

  /** A noun for more than one; one that ends in s is left as it is. */
  public static String plural(String noun) {
    return noun.endsWith("s") ? noun : noun + "s";
  }

  /** A number in words up to ten, in digits beyond. */
  public static String number(int number) {
    return number >= 0 && number < NUMBERS.size() ? NUMBERS.get(number) : String.valueOf(number);
  }

  /** So many halves as a number: {@code 4}, {@code 1.5}. */
  public static String halves(int halves) {
    return halves / 2 + (halves % 2 == 0 ? "" : ".5");
  }

  /** With a capital at the beginning. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A name within a sentence. */
  public static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** With {@code a} or {@code an} before it. */
  public static String indefinite(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) < 0 ? "a " : "an ") + noun;
  }
}
