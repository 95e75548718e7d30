package counterset.typed;

import counterset.ask.Keys;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Position;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which words of a name point to which equipment. */
final class EquipmentWords {

  private final Catalogue catalogue;
  private final Map<String, Set<String>> byKey = new HashMap<>();
  private final Map<String, Set<String>> loose = new HashMap<>();

  EquipmentWords(Catalogue catalogue) {
    this.catalogue = catalogue;
    for (Equipment item : catalogue.equipment().values()) {
      add(item.name(), item.id());
      item.names().forEach(name -> add(name, item.id()));
    }
    loose.put("band", having("band"));
    loose.put("banded", having("band"));
    loose.put("ball", having("ball"));
    loose.put("sliding", having("slider"));
    loose.put("weighted", ofKinds(EquipmentKind.HELD, EquipmentKind.WORN));
    loose.put("weight", ofKinds(EquipmentKind.HELD, EquipmentKind.WORN));
    loose.put("bar", having("bar"));
    loose.forEach((key, ids) -> byKey.merge(key, ids, EquipmentWords::both));
  }

  private void add(String name, String id) {
    Keys.ofName(name).forEach(key -> byKey.merge(key, Set.of(id), EquipmentWords::both));
  }

  private static Set<String> both(Set<String> a, Set<String> b) {
    Set<String> both = new LinkedHashSet<>(a);
    both.addAll(b);
    return both;
  }

  private Set<String> having(String word) {
    return catalogue.equipment().values().stream()
        .filter(item -> Keys.ofName(item.name()).contains(Keys.of(word)))
        .map(Equipment::id)
        .collect(Collectors.toSet());
  }

  private Set<String> ofKinds(EquipmentKind one, EquipmentKind other) {
    return catalogue.equipment().values().stream()
        .filter(item -> item.kind() == one || item.kind() == other)
        .map(Equipment::id)
        .collect(Collectors.toSet());
  }

  /** The equipment that a single word may stand for where no whole name of equipment stands. */
  Set<String> loosely(String key) {
    return loose.getOrDefault(key, Set.of());
  }

  /** The needed equipment that a word of an exercise's name points to; empty text if none. */
  String named(String key, Exercise exercise) {
    Set<String> ids = byKey.getOrDefault(key, Set.of());
    return exercise.needs().stream()
        .map(Need::equipment)
        .filter(ids::contains)
        .findFirst()
        .orElse("");
  }

  /** Whether it carries the client instead of loading them, as a chair or a wall does. */
  boolean carries(String id) {
    Equipment item = catalogue.equipment().get(id);
    return item.support() || item.alwaysThere();
  }

  boolean isThere(String id) {
    return catalogue.equipment().get(id).alwaysThere();
  }

  /** Whether any of it makes a position more comfortable, as a mat does. */
  boolean comforts(Set<String> ids, Position position) {
    return ids.stream()
        .map(catalogue.equipment()::get)
        .anyMatch(item -> item != null && item.comfortIn().contains(position));
  }
}
