package counterset.catalogue;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Position;
import counterset.model.Rule;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes a catalogue as the program inside one jar reads it fastest: the same catalogue gives the
 * same bytes.
 *
 * <p>First come the lengths of the distinct texts, then all texts as one, then the values of the
 * records in the order of their components. A number, a place in the list of texts, the place of a
 * constant in its enum and the size of a list all take two bytes.
 */
final class CompiledWriter {

  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private final List<Integer> values = new ArrayList<>();

  private CompiledWriter() {}

  static byte[] bytes(Catalogue catalogue) {
    CompiledWriter writer = new CompiledWriter();
    writer.list(catalogue.muscles().values(), writer::muscle);
    writer.list(catalogue.equipment().values(), writer::equipment);
    writer.list(catalogue.limitations().values(), writer::limitation);
    writer.list(catalogue.exercises().values(), writer::exercise);
    return writer.bytes();
  }

  private byte[] bytes() {
    byte[] joined = String.join("", texts.keySet()).getBytes(StandardCharsets.UTF_8);
    ByteBuffer bytes =
        ByteBuffer.allocate(
            Short.BYTES * (1 + texts.size() + values.size()) + Integer.BYTES + joined.length);
    bytes.putShort(twoBytes(texts.size()));
    texts.keySet().forEach(text -> bytes.putShort(twoBytes(text.length())));
    bytes.putInt(joined.length).put(joined);
    values.forEach(value -> bytes.putShort(twoBytes(value)));
    return bytes.array();
  }

  private static short twoBytes(int value) {
    if (value < 0 || value > 0xffff) {
      throw new IllegalArgumentException(
          "The value (" + value + ") of the catalogue does not fit into two bytes.");
    }
    return (short) value;
  }

  private void muscle(Muscle muscle) {
    text(muscle.id());
    text(muscle.name());
    constant(muscle.region());
    constant(muscle.aspect());
    texts(muscle.opposes());
    flag(muscle.defaultTarget());
    texts(muscle.names());
  }

  private void equipment(Equipment equipment) {
    text(equipment.id());
    text(equipment.name());
    constant(equipment.kind());
    values.add(equipment.putOnSeconds());
    values.add(equipment.takeOffSeconds());
    flag(equipment.support());
    positions(equipment.comfortIn());
    texts(equipment.names());
  }

  private void limitation(Limitation limitation) {
    text(limitation.id());
    text(limitation.name());
    texts(limitation.names());
    demand(limitation.maxDemand());
    texts(limitation.avoidTraits());
    positions(limitation.avoidPositions());
    text(limitation.caution());
    text(limitation.source());
    list(limitation.rules(), this::rule);
  }

  private void rule(Rule rule) {
    text(rule.rule());
    text(rule.source());
    constant(rule.status());
  }

  private void exercise(Exercise exercise) {
    text(exercise.id());
    text(exercise.name());
    texts(exercise.names());
    constant(exercise.part());
    text(exercise.pattern());
    text(exercise.family());
    flag(exercise.variantOf().isPresent());
    exercise.variantOf().ifPresent(this::text);
    flag(exercise.multiJoint());
    values.add(exercise.intensity());
    values.add(exercise.level());
    texts(exercise.primary());
    texts(exercise.secondary());
    constant(exercise.sides());
    constant(exercise.position());
    list(exercise.needs(), this::need);
    texts(exercise.allowsWorn());
    demand(exercise.demand());
    text(exercise.demandSource());
    texts(exercise.traits());
    text(exercise.met().code());
    values.add(exercise.met().edition());
    text(Double.toString(exercise.met().value()));
    flag(exercise.seconds().isPresent());
    exercise.seconds().ifPresent(values::add);
    text(exercise.setup());
    texts(exercise.cues());
    texts(exercise.faults());
    flag(exercise.figure().isPresent());
    exercise.figure().ifPresent(this::text);
  }

  private void need(Need need) {
    text(need.equipment());
    values.add(need.count());
    flag(need.load().isPresent());
    need.load().ifPresent(this::constant);
  }

  private void demand(Map<Joint, Integer> demand) {
    values.add(demand.size());
    demand.forEach(
        (joint, number) -> {
          constant(joint);
          values.add(number);
        });
  }

  private void positions(Collection<Position> positions) {
    list(positions, this::constant);
  }

  private void texts(Collection<String> all) {
    list(all, this::text);
  }

  private <T> void list(Collection<T> all, Consumer<T> each) {
    values.add(all.size());
    all.forEach(each);
  }

  private void text(String text) {
    texts.putIfAbsent(text, texts.size());
    values.add(texts.get(text));
  }

  private void constant(Enum<?> constant) {
    values.add(constant.ordinal());
  }

  private void flag(boolean flag) {
    values.add(flag ? 1 : 0);
  }
}
