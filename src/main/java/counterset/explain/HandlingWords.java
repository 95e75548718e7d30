package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.English;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Item;
import counterset.model.Position;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is handled in a changeover, and where the body goes, as short commands. */
public final class HandlingWords {

  private final ItemWords items;
  private final List<Equipment> comforts;

  /** The words for the equipment of a problem. */
  public HandlingWords(Problem problem, Catalogue catalogue) {
    this.items = new ItemWords(problem);
    this.comforts =
        problem.equipment().stream()
            .map(owned -> catalogue.equipment().get(owned.id()))
            .filter(equipment -> !equipment.comfortIn().isEmpty())
            .toList();
  }

  /** Whatever has to be done, in order; empty if nothing. */
  public List<String> sentences(Changeover changeover) {
    List<String> sentences = new ArrayList<>();
    String handling = handling(changeover);
    if (!handling.isEmpty()) {
      sentences.add(handling);
    }
    move(changeover.from().position(), changeover.to().position()).ifPresent(sentences::add);
    return sentences;
  }

  /** What is put away and taken up, as one sentence; empty text if nothing is. */
  private String handling(Changeover changeover) {
    List<Item> off = new ArrayList<>(changeover.takeOff());
    List<Item> on = new ArrayList<>(changeover.putOn());
    List<String> clauses = new ArrayList<>();
    for (Item item : changeover.putOn()) {
      Optional<Item> same =
          off.stream().filter(other -> items.areSamePieces(item, other)).findFirst();
      if (same.isPresent()) {
        clauses.add(sameAgain(same.get(), item));
        off.remove(same.get());
        on.remove(item);
      }
    }
    eachKind(kind -> away(kind, off)).forEach(clauses::add);
    eachKind(kind -> up(kind, on)).forEach(clauses::add);
    return sentence(clauses);
  }

  private String sameAgain(Item before, Item after) {
    int more = after.count() - before.count();
    String name =
        items.noun(new Item(after.equipment(), Math.max(1, Math.abs(more)), after.load()));
    if (more == 0) {
      String number = after.count() == 1 ? "" : English.number(after.count()) + " ";
      return "keep the same " + number + items.noun(after);
    }
    if (more > 0) {
      boolean second = more == 1 && before.count() == 1;
      return second
          ? "take up a second " + name
          : "take up " + English.number(more) + " more " + name;
    }
    return "put down " + English.number(-more) + " of " + items.saidAgain(before);
  }

  private String away(EquipmentKind kind, List<Item> all) {
    return clause(
        kind,
        all.stream().filter(item -> item.equipment().kind() == kind).map(items::saidAgain).toList(),
        "put down ",
        "take off ",
        "clear away ");
  }

  private String up(EquipmentKind kind, List<Item> all) {
    return clause(
        kind,
        all.stream().filter(item -> item.equipment().kind() == kind).map(items::said).toList(),
        "take up ",
        "strap on ",
        "lay out ");
  }

  private static String clause(
      EquipmentKind kind, List<String> names, String held, String worn, String placed) {
    String verb =
        switch (kind) {
          case HELD -> held;
          case WORN -> worn;
          case PLACED, FIXED -> placed;
        };
    return names.isEmpty() ? "" : verb + English.list(names);
  }

  private static Stream<String> eachKind(Function<EquipmentKind, String> clause) {
    return Stream.of(EquipmentKind.values()).map(clause).filter(text -> !text.isEmpty());
  }

  private static String sentence(List<String> clauses) {
    return clauses.isEmpty() ? "" : English.capital(English.list(clauses)) + ".";
  }

  /** Everything in use is put away. */
  String allAway(List<Item> inUse) {
    return sentence(eachKind(kind -> away(kind, inUse)).toList());
  }

  /** Where the body goes; the set-up sentence tells the rest. */
  Optional<String> move(Position from, Position to) {
    if (from == to) {
      return Optional.empty();
    }
    String change =
        switch (to) {
          case STANDING -> "Stand up.";
          case BENCH -> from.isFloor() ? "Get up and onto the bench." : "Onto the bench.";
          case SEATED -> from.isFloor() ? "Get up and take your seat." : "Take your seat.";
          case WALL -> from.isFloor() ? "Get up and go to the wall." : "Go to the wall.";
          case KNEELING -> floor(from, to, ", kneeling");
          case QUADRUPED -> floor(from, to, ", hands and knees");
          case FLOOR_SEATED -> floor(from, to, ", sitting");
          case SUPINE -> floor(from, to, "");
          case PRONE -> floor(from, to, ", face down");
          case SIDE_LYING -> floor(from, to, ", on your side");
        };
    return Optional.of(
        from == Position.WALL && to == Position.STANDING ? "Step away from the wall." : change);
  }

  private String floor(Position from, Position to, String how) {
    if (from.isFloor()) {
      return "Stay down" + (how.isEmpty() ? " on the floor" : how) + ".";
    }
    return comforts.stream()
            .filter(equipment -> equipment.comfortIn().contains(to))
            .findFirst()
            .map(equipment -> "Down on the " + English.lower(equipment.name()))
            .orElse("Down to the floor")
        + how
        + ".";
  }
}
