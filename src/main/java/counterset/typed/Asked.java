package counterset.typed;

import counterset.ask.AskFault;
import counterset.ask.AskReader;
import counterset.ask.AskReading;
import counterset.ask.AskTopic;
import counterset.model.Owned;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the session was asked to be: given beside the text, said in its first lines, or neither. */
final class Asked {

  private final AskReader asks;
  private final Optional<Problem> given;
  private final Report report;
  private final List<Source> lines = new ArrayList<>();
  private Optional<AskReading> reading = Optional.empty();

  Asked(AskReader asks, Optional<Problem> given, Report report) {
    this.asks = asks;
    this.given = given;
    this.report = report;
  }

  /** Whether a line can be read as an ask. */
  boolean canBe(Source source) {
    return asks.read(source.text()).problem().isPresent();
  }

  /** Takes a line as the ask or a further line of it. */
  void take(Source source, int start) {
    if (given.isPresent()) {
      report.taken(
          source, start, source.text().length(), "an ask, set aside: --for says what is asked");
      return;
    }
    lines.add(source.from(start));
    AskReading all =
        asks.read(String.join(", ", lines.stream().map(line -> line.text().strip()).toList()));
    if (all.problem().isEmpty()) {
      faults(source, start);
      return;
    }
    reading = Optional.of(all);
    report.taken(source, start, source.text().length(), "the ask");
  }

  /** What keeps a line from being an ask. */
  void faults(Source source, int start) {
    String text = source.from(start).text();
    List<AskFault> faults = new ArrayList<>(asks.read(text).faults());
    if (faults.isEmpty()) {
      report.fault(
          source, start, "This contradicts the ask in the lines before. Keep one of the two.");
    }
    for (AskFault fault : faults) {
      int place =
          text.offsetByCodePoints(
              0, Math.min(fault.column() - 1, text.codePointCount(0, text.length())));
      report.fault(source, place, "\"" + fault.phrase() + "\": " + fault.message());
    }
  }

  Optional<Problem> problem() {
    return given.or(() -> reading.flatMap(AskReading::problem));
  }

  /** What nothing was said of. */
  Set<AskTopic> silent() {
    return given.isPresent()
        ? Set.of()
        : reading.map(AskReading::assumed).orElse(EnumSet.allOf(AskTopic.class));
  }

  /** How the ask was read; empty if there is none. */
  List<String> echo() {
    return reading.map(AskReading::echo).orElse(List.of());
  }

  /** The equipment that was asked for, by id; empty if nothing was said of it. */
  Set<String> equipment() {
    return silent().contains(AskTopic.EQUIPMENT)
        ? Set.of()
        : problem().orElseThrow().equipment().stream().map(Owned::id).collect(Collectors.toSet());
  }
}
