package counterset.ask;

import counterset.model.Identified;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What may be varied in an ask or a problem, each value said as in an ask. */
public enum Axis implements Identified {
  MINUTES("minutes", ",", "15,20,30", draft -> draft.minutes.isSet()),
  EQUIPMENT(
      "equipment",
      ";",
      "dumbbells;dumbbells, ankle weights",
      draft -> !draft.equipment.isEmpty() || draft.noEquipment.isSet()),
  LIMITATIONS("limitations", ";", "none;sore knees", draft -> !draft.limitations.isEmpty()),
  LEVEL("level", ",", "1,2", draft -> draft.level.isSet()),
  PAIRING("pairing", ",", "opposing,free", draft -> draft.pairing.isSet()),
  TARGETS("targets", ";", "lower body;glutes, hamstrings", draft -> !draft.targets.isEmpty()),
  CLOCK(
      "clock",
      ",",
      "45/30,40/20",
      draft -> ClockPart.INTERVALS.stream().anyMatch(part -> draft.clock.get(part).isSet())),
  ROUNDS("rounds", ",", "1,2", draft -> draft.rounds.isSet()),
  SUPERSETS("supersets", ",", "supersets,tri-sets", draft -> draft.perSuperset.isSet()),
  SEED("seed", ",", "1,2,3", draft -> draft.seed.isSet());

  private final String id;
  private final String separator;
  private final String example;
  private final Predicate<AskDraft> said;

  Axis(String id, String separator, String example, Predicate<AskDraft> said) {
    this.id = id;
    this.separator = separator;
    this.example = example;
    this.said = said;
  }

  @Override
  public String id() {
    return id;
  }

  /** Values that make sense, as they are written. */
  public String example() {
    return example;
  }

  /**
   * The values in a list, each without spaces around it; an empty one stays, to be found fault
   * with.
   */
  public List<String> values(String list) {
    return Arrays.stream(list.split(separator, -1)).map(String::strip).toList();
  }

  /** The axis of a name. */
  public static Optional<Axis> of(String name) {
    return Identified.find(Axis.class, name);
  }

  /** Whether an example says most of what there is to say. */
  boolean hasFewValues() {
    return separator.equals(",");
  }

  /** All names, for messages. */
  public static String names() {
    return Arrays.stream(values()).map(Axis::id).collect(Collectors.joining(", "));
  }

  boolean isSaidIn(AskDraft draft) {
    return said.test(draft);
  }

  /** A value as a phrase of an ask: a bare number gets the word that goes with it. */
  String phrase(String value) {
    boolean bare = value.matches("[0-9]+");
    return switch (this) {
      case MINUTES -> bare ? value + " min" : value;
      case ROUNDS -> bare ? value + (value.equals("1") ? " round" : " rounds") : value;
      case LEVEL -> bare ? "level " + value : value;
      case SEED -> bare ? "seed " + value : value;
      case EQUIPMENT -> isNone(value) ? "no equipment" : value;
      default -> value;
    };
  }

  /** Whether a value says that there is nothing of the kind. */
  static boolean isNone(String value) {
    return Set.of("none", "nothing", "no").contains(Keys.of(value));
  }
}
