package counterset.ask;

import counterset.model.At;
import counterset.model.Keep;
import counterset.model.Owned;
import counterset.model.Pairing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What an ask has said so far, with the place of each thing. Lives for one reading. */
final class AskDraft {

  /** Equipment and the phrase that named it. */
  record Item(Owned owned, Span span) {}

  /** A kept exercise and the phrase that named it. */
  record Kept(Keep keep, Span span) {}

  /** The limitations that each follower of a group has, and the phrase that named them. */
  record TrackNamed(Set<String> ids, Span span) {}

  final Slot<Integer> minutes = new Slot<>("durations");
  final Slot<Integer> level = new Slot<>("levels");
  final Slot<Integer> perSuperset = new Slot<>("kinds of supersets");
  final Slot<Integer> rounds = new Slot<>("numbers of rounds");
  final Slot<Pairing> pairing = new Slot<>("pairings");
  final Slot<Long> seed = new Slot<>("seeds");
  final Slot<Boolean> noEquipment = new Slot<>("wishes");
  final Map<ClockPart, Slot<Integer>> clock = new EnumMap<>(ClockPart.class);

  final Set<String> targets = new LinkedHashSet<>();
  final Set<String> labels = new LinkedHashSet<>();
  final Set<String> emphasis = new LinkedHashSet<>();
  final Map<String, Slot<Integer>> minSets = new LinkedHashMap<>();
  final Map<String, Span> wanted = new LinkedHashMap<>();
  final Map<String, Span> removed = new LinkedHashMap<>();

  final List<Item> equipment = new ArrayList<>();
  final Map<String, Span> withoutEquipment = new LinkedHashMap<>();
  final Map<String, Span> limitations = new LinkedHashMap<>();
  final List<TrackNamed> tracks = new ArrayList<>();
  final Map<String, Span> include = new LinkedHashMap<>();
  final Map<String, Span> exclude = new LinkedHashMap<>();
  final Map<String, Span> likes = new LinkedHashMap<>();
  final Map<String, Span> dislikes = new LinkedHashMap<>();
  final List<Kept> kept = new ArrayList<>();

  private final List<AskFault> faults = new ArrayList<>();

  AskDraft() {
    for (ClockPart part : ClockPart.values()) {
      clock.put(part, new Slot<>("lengths of " + part.text()));
    }
  }

  List<AskFault> faults() {
    return faults;
  }

  void fault(Span span, String message) {
    faults.add(new AskFault(span.text(), span.column(), message));
  }

  /** Takes the seconds of an interval if they can be right. */
  void clock(ClockPart part, double seconds, Span span) {
    int least = part == ClockPart.WORK ? 1 : 0;
    if (!new Numeral(seconds, 0).isWhole(least, part.maxSeconds())) {
      fault(
          span,
          "The seconds of "
              + part.text()
              + " are a whole number from "
              + least
              + " to "
              + part.maxSeconds()
              + ".");
      return;
    }
    clock.get(part).set((int) seconds, span, this);
  }

  /** Notes that a muscle group was asked for by its own name, not merely as one of several. */
  void want(List<String> muscles, Span span) {
    if (muscles.size() == 1) {
      wanted.putIfAbsent(muscles.get(0), span);
    }
  }

  /** What nothing was said of. */
  Set<AskTopic> silentAbout() {
    Set<AskTopic> silent = EnumSet.noneOf(AskTopic.class);
    if (!minutes.isSet()) {
      silent.add(AskTopic.MINUTES);
    }
    if (targets.isEmpty() && emphasis.isEmpty() && minSets.isEmpty() && removed.isEmpty()) {
      silent.add(AskTopic.TARGETS);
    }
    if (equipment.isEmpty() && !noEquipment.isSet()) {
      silent.add(AskTopic.EQUIPMENT);
    }
    if (!rounds.isSet()) {
      silent.add(AskTopic.ROUNDS);
    }
    if (!clock.get(ClockPart.COOL_DOWN).isSet()) {
      silent.add(AskTopic.COOL_DOWN);
    }
    return silent;
  }

  Slot<Integer> minSets(String muscle) {
    return minSets.computeIfAbsent(muscle, id -> new Slot<>("numbers of sets"));
  }

  void equipment(Owned owned, Span span) {
    equipment.add(new Item(owned, span));
  }

  void keep(At at, String exercise, Span span) {
    kept.add(new Kept(new Keep(at, exercise), span));
  }
}
