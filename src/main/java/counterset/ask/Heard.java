package counterset.ask;

import counterset.model.Owned;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * What a phrase within another text says, read as an ask would have it.
 *
 * @param end the place of the token after it
 * @param minutes of the whole session
 * @param seconds by the part of the clock
 * @param perSuperset exercises in a superset
 * @param faults what is wrong with it; then it says nothing
 */
public record Heard(
    int end,
    OptionalInt minutes,
    Map<ClockPart, Integer> seconds,
    OptionalInt perSuperset,
    OptionalInt rounds,
    List<Owned> equipment,
    List<AskFault> faults) {

  public Heard {
    seconds = Map.copyOf(seconds);
    equipment = List.copyOf(equipment);
    faults = List.copyOf(faults);
  }

  static Heard of(Phrase phrase) {
    AskDraft draft = new AskDraft();
    phrase.effect().ifPresent(effect -> effect.accept(draft));
    Map<ClockPart, Integer> seconds = new EnumMap<>(ClockPart.class);
    draft.clock.forEach((part, slot) -> slot.value().ifPresent(it -> seconds.put(part, it)));
    return new Heard(
        phrase.end(),
        number(draft.minutes),
        seconds,
        number(draft.perSuperset),
        number(draft.rounds),
        draft.equipment.stream().map(AskDraft.Item::owned).toList(),
        draft.faults());
  }

  private static OptionalInt number(Slot<Integer> slot) {
    return slot.isSet() ? OptionalInt.of(slot.or(0)) : OptionalInt.empty();
  }

  /** Whether it says something of the clock. */
  public boolean saysClock() {
    return minutes.isPresent()
        || !seconds.isEmpty()
        || perSuperset.isPresent()
        || rounds.isPresent();
  }
}
