package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads "45/30" (work, rest) and "45/15/30" (work, switch, rest), in seconds. */
final class ClockReader implements PhraseReader {

  @Override
  public Optional<Phrase> read(Words words, int at) {
    int first = afterNames(words, at);
    List<Double> seconds = new ArrayList<>();
    int end = first;
    Numeral numeral = Numeral.read(words, first).orElse(null);
    while (numeral != null) {
      seconds.add(numeral.value());
      end = TimeLengths.unit(words, numeral.end()) == 1 ? numeral.end() + 1 : numeral.end();
      numeral = words.is(end, "/") ? Numeral.read(words, end + 1).orElse(null) : null;
    }
    if (seconds.size() < 2) {
      return Optional.empty();
    }
    end = afterNames(words, end);
    if (seconds.size() > 3) {
      return Phrase.fault(
          words,
          at,
          end,
          "Say work/rest (\"45/30\") or work/switch/rest (\"45/15/30\"), in seconds.");
    }
    List<ClockPart> parts =
        seconds.size() == 2
            ? List.of(ClockPart.WORK, ClockPart.REST)
            : List.of(ClockPart.WORK, ClockPart.SWITCH, ClockPart.REST);
    Span span = words.span(at, end);
    return Phrase.of(
        end,
        draft -> {
          for (int i = 0; i < parts.size(); i++) {
            draft.clock(parts.get(i), seconds.get(i), span);
          }
        });
  }

  /**
   * The place after "work/rest" or "work/switch/rest", which may stand before or after the figures.
   */
  private static int afterNames(Words words, int at) {
    if (!words.is(at, "work") || !words.is(at + 1, "/")) {
      return at;
    }
    int last = words.is(at + 2, "switch") && words.is(at + 3, "/") ? at + 4 : at + 2;
    return words.is(last, "rest") ? words.skip(last + 1, ":") : at;
  }
}
