package counterset.timeline;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Item;
import counterset.model.Need;
import counterset.model.Position;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The items that a set of exercises can need, each a bit of a {@code long}, and the arithmetic of
 * changing them.
 *
 * <p>Equipment that is always there is no item: it is neither taken up nor put away.
 */
public final class Kit {

  /** Seconds of the work interval that a changeover inside a superset may use. */
  public static final int GRACE_IN_WORK = 5;

  /** Seconds at the end of a rest that belong to the countdown. */
  public static final int COUNTDOWN = 5;

  private static final int ON_THE_FLOOR = 3;
  private static final int OFF_THE_FLOOR = 5;
  private static final int UP_OR_DOWN = 6;

  private final List<Item> items = new ArrayList<>();
  private final Map<String, Handling> handlings = new HashMap<>();
  private final int[] putOn;
  private final int[] takeOff;
  private final long placed;

  /**
   * Compiles the items of exercises.
   *
   * @throws IllegalArgumentException if they need more than 64 different items
   */
  public Kit(Catalogue catalogue, Collection<Exercise> exercises) {
    Map<Item, Integer> bits = new LinkedHashMap<>();
    for (Exercise exercise : exercises) {
      for (Need need : exercise.needs()) {
        Equipment equipment = catalogue.equipment().get(need.equipment());
        if (!equipment.alwaysThere()) {
          bits.putIfAbsent(new Item(equipment, need.count(), need.load()), bits.size());
        }
      }
    }
    if (bits.size() > Long.SIZE) {
      throw new IllegalArgumentException(
          "The exercises need too many different items ("
              + bits.size()
              + "). Maybe list less equipment: 64 is the limit.");
    }
    items.addAll(bits.keySet());
    putOn = items.stream().mapToInt(item -> item.equipment().putOnSeconds()).toArray();
    takeOff = items.stream().mapToInt(item -> item.equipment().takeOffSeconds()).toArray();
    placed = placed();
    for (Exercise exercise : exercises) {
      handlings.put(exercise.id(), compile(exercise));
    }
  }

  private long placed() {
    long bits = 0;
    for (int bit = 0; bit < items.size(); bit++) {
      boolean stands = items.get(bit).equipment().kind() == EquipmentKind.PLACED;
      bits |= stands ? 1L << bit : 0;
    }
    return bits;
  }

  private Handling compile(Exercise exercise) {
    long needs = 0;
    long keeps = 0;
    for (int bit = 0; bit < items.size(); bit++) {
      Item item = items.get(bit);
      boolean needed =
          exercise.needs().contains(new Need(item.equipment().id(), item.count(), item.load()));
      boolean allowed =
          item.equipment().kind() == EquipmentKind.WORN
              && exercise.allowsWorn().contains(item.equipment().id());
      needs |= needed ? 1L << bit : 0;
      keeps |= needed || allowed ? 1L << bit : 0;
    }
    return new Handling(needs, keeps, exercise.position());
  }

  /** How an exercise is handled; it must be one of those that this was made with. */
  public Handling of(Exercise exercise) {
    return handlings.get(exercise.id());
  }

  /** What is put away when the next exercise begins. */
  public static long takenOff(long inUse, Handling next) {
    return inUse & ~next.keeps();
  }

  /** What is taken up when the next exercise begins. */
  public static long putOn(long inUse, Handling next) {
    return next.needs() & ~inUse;
  }

  /** What is in use once the next exercise has begun. */
  public static long inUseAfter(long inUse, Handling next) {
    return inUse & next.keeps() | next.needs();
  }

  /**
   * How many items pass through the hands: what is put away for what is taken up is one exchange,
   * and what is placed stands ready once it is out.
   */
  public int inHand(long inUse, Handling next) {
    return Math.max(
        Long.bitCount(takenOff(inUse, next) & ~placed),
        Long.bitCount(putOn(inUse, next) & ~placed));
  }

  /** The seconds from one exercise to the next. */
  public int seconds(long inUse, Handling last, Handling next) {
    int seconds = positionSeconds(last.position(), next.position());
    for (long rest = takenOff(inUse, next); rest != 0; rest &= rest - 1) {
      seconds += takeOff[Long.numberOfTrailingZeros(rest)];
    }
    for (long rest = putOn(inUse, next); rest != 0; rest &= rest - 1) {
      seconds += putOn[Long.numberOfTrailingZeros(rest)];
    }
    return seconds;
  }

  /** The seconds to move the body from one position to another. */
  public static int positionSeconds(Position from, Position to) {
    if (from == to) {
      return 0;
    }
    if (from.isFloor() != to.isFloor()) {
      return UP_OR_DOWN;
    }
    return from.isFloor() ? ON_THE_FLOOR : OFF_THE_FLOOR;
  }

  /** The room for a changeover between the exercises of one superset. */
  public static int roomInside(Intervals clock) {
    return clock.between() + GRACE_IN_WORK;
  }

  /** The room for a changeover in a rest, at least 0. */
  public static int roomInRest(Intervals clock) {
    return Math.max(0, clock.rest() - COUNTDOWN);
  }

  /** The items behind bits, in the order of the catalogue's exercises. */
  public List<Item> items(long bits) {
    List<Item> list = new ArrayList<>();
    for (long rest = bits; rest != 0; rest &= rest - 1) {
      list.add(items.get(Long.numberOfTrailingZeros(rest)));
    }
    return list;
  }
}
