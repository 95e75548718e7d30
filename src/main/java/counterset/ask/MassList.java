package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Masses: "8 kg", "6 and 10 kg", "6 kg, 8 kg".
 *
 * @param pounds whether a mass was given in another unit
 * @param end the place after the last unit
 */
record MassList(List<Double> kg, boolean pounds, int end) {

  static Optional<MassList> read(Words words, int at) {
    List<Double> values = new ArrayList<>();
    boolean pounds = false;
    int read = 0;
    int end = at;
    int i = at;
    Numeral numeral = Numeral.read(words, i).orElse(null);
    while (numeral != null) {
      values.add(numeral.value());
      i = numeral.end();
      if (isUnit(words, i)) {
        pounds |= words.is(i, "lb", "pound");
        i++;
        read = values.size();
        end = i;
      }
      int next = words.is(i, ",") && words.is(i + 1, "and") ? i + 2 : i + 1;
      numeral = words.is(i, ",", "and", "or", "/") ? Numeral.read(words, next).orElse(null) : null;
    }
    return read == 0
        ? Optional.empty()
        : Optional.of(new MassList(List.copyOf(values.subList(0, read)), pounds, end));
  }

  static boolean isUnit(Words words, int at) {
    return words.is(at, "kg", "kilo", "kilogram", "kilogramme", "lb", "pound");
  }
}
