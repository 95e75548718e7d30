package counterset.ask;

import counterset.model.Equipment;
import counterset.model.Load;
import counterset.model.Owned;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Equipment in plain words. */
public final class EquipmentText {

  private EquipmentText() {}

  /** The name, in the plural for more than one. */
  static String of(Equipment equipment, int count) {
    String name = equipment.name().toLowerCase(Locale.ROOT);
    return count == 1 || name.endsWith("s") ? name : name + "s";
  }

  /** Count, name, masses and loads: "2 dumbbells of 8 kg (any load)". */
  public static String of(Equipment equipment, Owned owned, boolean showLoad) {
    String name = of(equipment, owned.count());
    String text = owned.count() == 1 && !showLoad ? name : owned.count() + " " + name;
    if (!owned.kg().isEmpty()) {
      text += (owned.kg().size() > 1 ? " each of " : " of ") + kg(owned.kg()) + " kg";
    }
    return showLoad ? text + " (" + loads(owned) + ")" : text;
  }

  private static String loads(Owned owned) {
    return owned.loads().size() == Load.values().length
        ? "any load"
        : owned.loads().stream().map(Load::id).collect(Collectors.joining(" and "));
  }

  private static String kg(List<Double> masses) {
    return masses.stream()
        .map(kg -> BigDecimal.valueOf(kg).stripTrailingZeros().toPlainString())
        .collect(Collectors.joining(" and "));
  }
}
