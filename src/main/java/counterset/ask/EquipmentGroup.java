package counterset.ask;

import counterset.model.Identified;
import counterset.model.Load;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is said of a piece of equipment before its name: "a pair of light", "two 8 kg".
 *
 * @param pairs whether the count counts pairs
 * @param end the place after it
 */
record EquipmentGroup(
    OptionalDouble count, boolean pairs, Set<Load> loads, Optional<MassList> masses, int end) {

  /** Reads what is there, which may be nothing. */
  static EquipmentGroup read(Words words, int at) {
    int i = words.skip(at, "the", "some", "my", "her", "his", "their", "your", "our");
    boolean article = words.is(i, "a", "an", "single");
    i = words.skip(i, "a", "an", "single");
    OptionalDouble count = article ? OptionalDouble.of(1) : OptionalDouble.empty();
    Numeral numeral = Numeral.read(words, i).orElse(null);
    if (numeral != null && MassList.read(words, i).isEmpty()) {
      count = OptionalDouble.of(numeral.value());
      i = words.skip(numeral.end(), "x");
    }
    boolean pairs = words.is(i, "pair");
    if (pairs) {
      count = count.isPresent() ? count : OptionalDouble.of(1);
      i = words.skip(i + 1, "of");
    }
    Set<Load> loads = EnumSet.noneOf(Load.class);
    i = loads(words, i, loads);
    Optional<MassList> masses = MassList.read(words, i);
    i = loads(words, masses.map(MassList::end).orElse(i), loads);
    return new EquipmentGroup(count, pairs, loads, masses, i);
  }

  private static int loads(Words words, int at, Set<Load> loads) {
    int i = at;
    Optional<Load> load = load(words, i);
    while (load.isPresent()) {
      loads.add(load.get());
      i++;
      int next = words.is(i, "and", "or", "to") ? i + 1 : i;
      load = load(words, next);
      i = load.isPresent() ? next : i;
    }
    return i;
  }

  private static Optional<Load> load(Words words, int at) {
    return Identified.find(Load.class, words.at(at).key());
  }

  /**
   * Whether it says enough to go before the name of another group: "a light and a heavy dumbbell".
   */
  boolean mayShareName() {
    return masses.isPresent() || !loads.isEmpty();
  }

  EquipmentGroup with(MassList after) {
    return new EquipmentGroup(count, pairs, loads, Optional.of(after), after.end());
  }

  List<Double> kg() {
    return masses.map(MassList::kg).orElse(List.of());
  }
}
