package counterset.typed;

import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Position;
import counterset.model.Sides;
import counterset.spelling.Slips;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * How well a name that was typed fits a name of the catalogue.
 *
 * <p>Every word that was typed must be accounted for, in any order: it is a word of the name, a
 * slip of one, or says of the exercise what is true of it. Words of the name that were not typed
 * cost.
 */
final class Fit {

  private static final int SLIP = 2;
  private static final int MISSING = 3;
  private static final int MAY_STAY_ON = 2;
  private static final Set<String> SOFT =
      Set.of("standing", "alternating", "spot", "place", "hand", "high", "two", "full", "easy");

  private final Wanted wanted;
  private final Entry entry;
  private final EquipmentWords equipment;
  private final List<String> left;
  private int cost;
  private int aligned;

  private Fit(Wanted wanted, Entry entry, EquipmentWords equipment) {
    this.wanted = wanted;
    this.entry = entry;
    this.equipment = equipment;
    this.left = new ArrayList<>(entry.keys());
  }

  /** What a name costs: 0 if it is that name; empty if it is another. */
  static OptionalInt cost(Wanted wanted, Entry entry, EquipmentWords equipment) {
    return new Fit(wanted, entry, equipment).cost();
  }

  private OptionalInt cost() {
    if (!entry.must().stream().allMatch(id -> wanted.mentions(id))) {
      return OptionalInt.empty();
    }
    cost = entry.must().isEmpty() ? 0 : 1;
    List<Word> open = joined(exact(wanted.words()));
    for (Word word : open) {
      if (!slip(word) && !isTrue(word)) {
        return OptionalInt.empty();
      }
    }
    int missing = missing();
    return aligned > 0 && aligned >= missing && cost <= 8
        ? OptionalInt.of(cost)
        : OptionalInt.empty();
  }

  private List<Word> exact(List<Word> words) {
    List<Word> open = new ArrayList<>();
    for (Word word : words) {
      if (left.remove(word.key())) {
        count(word);
      } else {
        open.add(word);
      }
    }
    return open;
  }

  /** A word that only names equipment does not make two names alike. */
  private void count(Word word) {
    aligned += word.equipment().isEmpty() || entry.keys().size() == 1 ? 1 : 0;
  }

  /** Two words written as one, and one written as two. */
  private List<Word> joined(List<Word> words) {
    List<Word> open = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Word word = words.get(i);
      String both = i + 1 < words.size() ? word.key() + words.get(i + 1).key() : "";
      if (left.remove(both)) {
        count(word);
        i++;
      } else if (pair(word.key())) {
        count(word);
      } else {
        open.add(word);
      }
    }
    return open;
  }

  private boolean pair(String key) {
    for (int i = 0; i + 1 < left.size(); i++) {
      if (key.equals(left.get(i) + left.get(i + 1))) {
        left.remove(i + 1);
        left.remove(i);
        return true;
      }
    }
    return false;
  }

  private boolean slip(Word word) {
    for (String key : left) {
      if (stem(key).equals(stem(word.key())) || Slips.only(word.key(), key)) {
        cost += stem(key).equals(stem(word.key())) ? 0 : SLIP;
        left.remove(key);
        count(word);
        return true;
      }
    }
    return false;
  }

  private static String stem(String key) {
    return key.length() > 5 && key.endsWith("ing") ? key.substring(0, key.length() - 3) : key;
  }

  /** Whether a word that is not in the name says what holds of the exercise anyway. */
  private boolean isTrue(Word word) {
    Exercise exercise = entry.exercise();
    Set<String> ids = word.equipment();
    if (exercise.needs().stream().map(Need::equipment).anyMatch(ids::contains)
        || equipment.comforts(ids, exercise.position())) {
      return true;
    }
    if (exercise.allowsWorn().stream().anyMatch(ids::contains)) {
      // It may stay on, but another way of doing it may need it.
      cost += MAY_STAY_ON;
      return true;
    }
    if (word.key().equals("single") || word.key().equals("two")) {
      return !ids.isEmpty();
    }
    cost++;
    return describes(word.key(), exercise);
  }

  private boolean describes(String key, Exercise exercise) {
    Position position = exercise.position();
    return switch (key) {
      case "standing" -> position == Position.STANDING;
      case "seated", "sitting" -> position == Position.SEATED || position == Position.FLOOR_SEATED;
      case "kneeling" -> position == Position.KNEELING;
      case "lying", "floor" -> position.isFloor() || position == Position.BENCH;
      case "supported", "hand" ->
          exercise.needs().stream().map(Need::equipment).anyMatch(equipment::carries);
      case "alternating" -> exercise.sides() == Sides.ALTERNATING;
      case "bodyweight" ->
          exercise.needs().stream().map(Need::equipment).allMatch(equipment::carries);
      case "hold" -> exercise.pattern().equals("brace");
      default -> false;
    };
  }

  /** What it costs that equipment of the name was not typed with it. */
  private int unsaid(String id) {
    if (wanted.mentions(id)) {
      return 0;
    }
    return wanted.known().contains(id) ? 1 : MISSING;
  }

  /** Adds up what was not typed, and returns how many words of weight that is. */
  private int missing() {
    int missing = 0;
    for (String key : left) {
      String id = equipment.named(key, entry.exercise());
      if (!id.isEmpty()) {
        cost += unsaid(id);
      } else if (SOFT.contains(key)) {
        cost++;
      } else {
        cost += MISSING;
        missing++;
      }
    }
    return missing;
  }
}
