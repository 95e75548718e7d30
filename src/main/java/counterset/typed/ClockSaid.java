package counterset.typed;

import counterset.ask.ClockPart;
import counterset.ask.Heard;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;

/** What the lines say of the clock. Each part may be said often, but not in two ways. */
final class ClockSaid {

  private record Value(int amount, int line) {}

  private final Report report;
  private final Map<ClockPart, Value> seconds = new EnumMap<>(ClockPart.class);
  private Value minutes;
  private Value rounds;
  private Value perSuperset;

  ClockSaid(Report report) {
    this.report = report;
  }

  void take(Heard heard, Source source, int start) {
    heard.seconds().forEach((part, amount) -> seconds(part, amount, source, start));
    heard.minutes().ifPresent(it -> minutes = one(minutes, it, "minutes", source, start));
    heard.rounds().ifPresent(it -> rounds(it, source, start));
    heard
        .perSuperset()
        .ifPresent(
            it -> perSuperset = one(perSuperset, it, "exercises in a superset", source, start));
  }

  void seconds(ClockPart part, int amount, Source source, int start) {
    String what = "seconds of " + part.text();
    seconds.put(part, one(seconds.get(part), amount, what, source, start));
  }

  void rounds(int amount, Source source, int start) {
    rounds = one(rounds, amount, "rounds", source, start);
  }

  private Value one(Value before, int amount, String what, Source source, int start) {
    if (before != null && before.amount() != amount) {
      report.fault(
          source,
          start,
          "Line "
              + before.line()
              + " says "
              + before.amount()
              + " "
              + what
              + ", this line "
              + amount
              + "; all supersets share one clock. Keep one of the two.");
    }
    return before == null ? new Value(amount, source.number()) : before;
  }

  OptionalInt seconds(ClockPart part) {
    return of(seconds.get(part));
  }

  OptionalInt minutes() {
    return of(minutes);
  }

  OptionalInt rounds() {
    return of(rounds);
  }

  OptionalInt perSuperset() {
    return of(perSuperset);
  }

  private static OptionalInt of(Value value) {
    return value == null ? OptionalInt.empty() : OptionalInt.of(value.amount());
  }
}
