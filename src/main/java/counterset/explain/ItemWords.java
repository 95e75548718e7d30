package counterset.explain;

import counterset.model.English;
import counterset.model.Item;
import counterset.model.Load;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Equipment in a coach's words. The masses are those of the problem, in kilograms: light is the
 * lightest, heavy the heaviest and medium the middle one, the upper of two.
 */
public final class ItemWords {

  private final Problem problem;

  /** The words for the equipment of a problem. */
  public ItemWords(Problem problem) {
    this.problem = problem;
  }

  /** As written: {@code two dumbbells (heavy, 10 kg)}, {@code ankle weights}, {@code a mat}. */
  public String written(Item item) {
    String details = details(item);
    return plain(item, "") + (details.isEmpty() ? "" : " (" + details + ")");
  }

  /** As said aloud: {@code two heavy dumbbells}, {@code ankle weights}, {@code a mat}. */
  public String said(Item item) {
    return plain(item, label(item));
  }

  /** As said of what is in use already: {@code the two heavy dumbbells}, {@code the mat}. */
  public String saidAgain(Item item) {
    return "the "
        + (item.count() == 1 ? "" : English.number(item.count()) + " ")
        + label(item)
        + noun(item);
  }

  /** Several items as said aloud, joined. */
  public String said(List<Item> items) {
    return English.list(items.stream().map(this::said).toList());
  }

  /** The mass of one piece, in kilograms, where the problem tells. */
  public OptionalDouble kg(Item item) {
    Optional<Owned> owned = owned(item);
    if (owned.isEmpty() || owned.get().kg().isEmpty() || item.load().isEmpty()) {
      return OptionalDouble.empty();
    }
    List<Double> masses = owned.get().kg();
    return OptionalDouble.of(masses.get(index(item.load().get(), masses.size())));
  }

  private static int index(Load load, int masses) {
    return switch (load) {
      case LIGHT -> 0;
      case MEDIUM -> masses / 2;
      case HEAVY -> masses - 1;
    };
  }

  /**
   * Whether two items are the same pieces, perhaps more or fewer of them: a label alone makes no
   * other dumbbell.
   */
  public boolean areSamePieces(Item one, Item other) {
    OptionalDouble kg = kg(one);
    return one.equipment().id().equals(other.equipment().id())
        && (one.load().equals(other.load()) || kg.isPresent() && kg.equals(kg(other)));
  }

  /** Its name within a sentence, for as many as there are. */
  String noun(Item item) {
    String name = English.lower(item.equipment().name());
    return item.count() == 1 ? name : English.plural(name);
  }

  private String plain(Item item, String label) {
    String name = English.lower(item.equipment().name());
    if (item.count() == 1 && name.endsWith("s")) {
      return label + name;
    }
    if (item.count() == 1 && item.load().isEmpty()) {
      return English.indefinite(name);
    }
    return English.number(item.count()) + " " + label + noun(item);
  }

  private String details(Item item) {
    OptionalDouble kg = kg(item);
    String label = label(item).strip();
    if (kg.isEmpty()) {
      return label;
    }
    String mass = BigDecimal.valueOf(kg.getAsDouble()).stripTrailingZeros().toPlainString() + " kg";
    return label.isEmpty() ? mass : label + ", " + mass;
  }

  /**
   * How heavy among what the client has, with a space behind it; nothing where that is one mass
   * only.
   */
  private String label(Item item) {
    if (item.load().isEmpty()) {
      return "";
    }
    Load load = item.load().get();
    int masses = owned(item).map(Owned::kg).map(List::size).orElse(0);
    if (masses == 1 && entries(item) == 1) {
      return "";
    }
    boolean heaviest = masses > 1 && index(load, masses) == masses - 1;
    return (heaviest ? Load.HEAVY : load).id() + " ";
  }

  private Optional<Owned> owned(Item item) {
    Need need = new Need(item.equipment().id(), item.count(), item.load());
    return problem.equipment().stream().filter(owned -> owned.serves(need)).findFirst();
  }

  private long entries(Item item) {
    return problem.equipment().stream()
        .filter(owned -> owned.id().equals(item.equipment().id()))
        .count();
  }
}
