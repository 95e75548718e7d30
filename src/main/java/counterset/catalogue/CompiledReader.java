package counterset.catalogue;

import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Load;
import counterset.model.Met;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Region;
import counterset.model.Rule;
import counterset.model.Sides;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;

/** Reads what {@link CompiledWriter} wrote in the build of the same program. */
final class CompiledReader {

  private static final Region[] REGIONS = Region.values();
  private static final Aspect[] ASPECTS = Aspect.values();
  private static final EquipmentKind[] KINDS = EquipmentKind.values();
  private static final Rule.Status[] STATUSES = Rule.Status.values();
  private static final Part[] PARTS = Part.values();
  private static final Sides[] SIDES = Sides.values();
  private static final Position[] POSITIONS = Position.values();
  private static final Load[] LOADS = Load.values();
  private static final Joint[] JOINTS = Joint.values();

  private final ByteBuffer bytes;
  private final String[] texts;

  private CompiledReader(ByteBuffer bytes) {
    this.bytes = bytes;
    int[] ends = new int[number()];
    int end = 0;
    for (int i = 0; i < ends.length; i++) {
      end += number();
      ends[i] = end;
    }
    int length = bytes.getInt();
    String joined = new String(bytes.array(), bytes.position(), length, StandardCharsets.UTF_8);
    bytes.position(bytes.position() + length);
    texts = new String[ends.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = joined.substring(i == 0 ? 0 : ends[i - 1], ends[i]);
    }
  }

  static Catalogue catalogue(byte[] compiled) {
    CompiledReader reader = new CompiledReader(ByteBuffer.wrap(compiled));
    Catalogue catalogue =
        Catalogue.of(
            reader.list(reader::muscle),
            reader.list(reader::equipment),
            reader.list(reader::limitation),
            reader.list(reader::exercise));
    if (reader.bytes.hasRemaining()) {
      throw new IllegalStateException("The compiled catalogue is not of this program.");
    }
    return catalogue;
  }

  private Muscle muscle() {
    return new Muscle(
        text(), text(), REGIONS[number()], ASPECTS[number()], textSet(), flag(), texts());
  }

  private Equipment equipment() {
    return new Equipment(
        text(), text(), KINDS[number()], number(), number(), flag(), positions(), texts());
  }

  private Limitation limitation() {
    return new Limitation(
        text(),
        text(),
        texts(),
        demand(),
        textSet(),
        positions(),
        text(),
        text(),
        list(this::rule));
  }

  private Rule rule() {
    return new Rule(text(), text(), STATUSES[number()]);
  }

  private Exercise exercise() {
    return new Exercise(
        text(),
        text(),
        texts(),
        PARTS[number()],
        text(),
        text(),
        flag() ? Optional.of(text()) : Optional.empty(),
        flag(),
        number(),
        number(),
        textSet(),
        textSet(),
        SIDES[number()],
        POSITIONS[number()],
        list(this::need),
        textSet(),
        demand(),
        text(),
        textSet(),
        new Met(text(), number(), Double.parseDouble(text())),
        flag() ? OptionalInt.of(number()) : OptionalInt.empty(),
        text(),
        texts(),
        texts(),
        flag() ? Optional.of(text()) : Optional.empty());
  }

  private Need need() {
    return new Need(text(), number(), flag() ? Optional.of(LOADS[number()]) : Optional.empty());
  }

  private Map<Joint, Integer> demand() {
    Map<Joint, Integer> demand = new EnumMap<>(Joint.class);
    for (int left = number(); left > 0; left--) {
      demand.put(JOINTS[number()], number());
    }
    return demand;
  }

  private Set<Position> positions() {
    return new LinkedHashSet<>(list(() -> POSITIONS[number()]));
  }

  private Set<String> textSet() {
    return new LinkedHashSet<>(texts());
  }

  private List<String> texts() {
    String[] some = new String[number()];
    for (int i = 0; i < some.length; i++) {
      some[i] = text();
    }
    return Arrays.asList(some);
  }

  private <T> List<T> list(Supplier<T> each) {
    int size = number();
    List<T> all = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      all.add(each.get());
    }
    return all;
  }

  private String text() {
    return texts[number()];
  }

  private boolean flag() {
    return number() == 1;
  }

  private int number() {
    return bytes.getShort() & 0xffff;
  }
}
