package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Load;
import counterset.model.Owned;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads equipment with counts, masses and loads: "two 8 kg dumbbells", "a light and a heavy
 * dumbbell", "chair".
 */
final class EquipmentReader implements PhraseReader {

  private static final int MAX_COUNT = 20;
  private static final int MAX_KG = 200;

  private final Vocabulary vocabulary;
  private final Catalogue catalogue;

  EquipmentReader(Vocabulary vocabulary, Catalogue catalogue) {
    this.vocabulary = vocabulary;
    this.catalogue = catalogue;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    List<EquipmentGroup> groups = new ArrayList<>();
    int i = at;
    Match name = null;
    while (name == null) {
      EquipmentGroup group = EquipmentGroup.read(words, i);
      groups.add(group);
      name = name(words, group.end()).orElse(null);
      boolean more = group.mayShareName() && words.is(group.end(), ",", "and", "or", "plus");
      if (name == null && !more) {
        return Optional.empty();
      }
      i = words.skip(group.end(), ",", "and", "or", "plus");
    }
    return phrase(words, at, groups, name);
  }

  private Optional<Match> name(Words words, int at) {
    return vocabulary.match(words, at, Kind.values()).filter(match -> match.has(Kind.EQUIPMENT));
  }

  private Optional<Phrase> phrase(Words words, int at, List<EquipmentGroup> groups, Match name) {
    int end = name.end();
    MassList after =
        groups.size() == 1 && groups.get(0).masses().isEmpty() ? massesAfter(words, end) : null;
    if (after != null) {
      groups.set(0, groups.get(0).with(after));
      end = after.end();
    }
    List<String> ids = name.ids(Kind.EQUIPMENT);
    if (ids.size() > 1) {
      return Phrase.fault(
          words, at, end, "This may be any of " + String.join(", ", ids) + ". Name one of them.");
    }
    Equipment equipment = catalogue.equipment().get(ids.get(0));
    boolean plural = words.at(name.end() - 1).isPlural();
    for (EquipmentGroup group : groups) {
      String wrong = wrong(group, groups.size() > 1);
      if (wrong != null) {
        return Phrase.fault(words, at, end, wrong);
      }
    }
    Span span = words.span(at, end);
    return Phrase.of(
        end,
        draft -> groups.forEach(group -> draft.equipment(owned(equipment, group, plural), span)));
  }

  /** Masses after the name, unless they belong to the name that follows them. */
  private MassList massesAfter(Words words, int at) {
    int start = words.skip(at, "of", "at", "(", ":");
    EquipmentGroup group = EquipmentGroup.read(words, start);
    boolean simple = group.loads().isEmpty() && !group.pairs() && group.masses().isPresent();
    boolean counted = group.count().isPresent();
    return simple && !counted && name(words, group.end()).isEmpty() ? group.masses().get() : null;
  }

  private static String wrong(EquipmentGroup group, boolean several) {
    if (group.masses().map(MassList::pounds).orElse(false)) {
      return "Masses are in kilograms: 1 lb is 0.454 kg. Say the masses in kg.";
    }
    if (group.kg().stream().anyMatch(kg -> kg <= 0 || kg > MAX_KG)) {
      return "A mass is more than 0 and at most " + MAX_KG + " kg.";
    }
    OptionalDouble count = group.count();
    if (count.isPresent() && !new Numeral(count.getAsDouble(), 0).isWhole(1, MAX_COUNT)) {
      return "A count of equipment is a whole number from 1 to "
          + MAX_COUNT
          + (count.getAsDouble() == 0 && !several ? "; leave out what is not there." : ".");
    }
    return null;
  }

  private static Owned owned(Equipment equipment, EquipmentGroup group, boolean plural) {
    Set<Load> loads = group.loads().isEmpty() ? EnumSet.allOf(Load.class) : group.loads();
    return new Owned(equipment.id(), count(equipment, group, plural), group.kg(), loads);
  }

  private static int count(Equipment equipment, EquipmentGroup group, boolean plural) {
    boolean comesInPairs = equipment.name().endsWith("s");
    if (group.count().isEmpty()) {
      return plural && !comesInPairs && equipment.kind() == EquipmentKind.HELD ? 2 : 1;
    }
    int count = (int) group.count().getAsDouble();
    if (comesInPairs) {
      return group.pairs() ? count : Math.max(1, count / 2);
    }
    boolean pairPerMass = group.pairs() && count == group.kg().size();
    return group.pairs() ? pairPerMass ? 2 : 2 * count : count;
  }
}
