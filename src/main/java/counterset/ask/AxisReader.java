package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads single values of an {@link Axis} with the words that asks may use. */
public final class AxisReader {

  private final AskReader reader;

  public AxisReader(Catalogue catalogue) {
    this.reader = new AskReader(catalogue);
  }

  /** Reads one value; never throws, whatever it is. */
  public AxisReading read(Axis axis, String value) {
    if (value.isBlank()) {
      return AxisReading.fault("This value is empty. " + example(axis));
    }
    if (axis == Axis.LIMITATIONS && Axis.isNone(value)) {
      return AxisReading.of(
          new AxisValue(axis, "no limitation", said -> said.limitations = Set.of()));
    }
    String phrase = axis.phrase(value);
    AskDraft draft = new AskDraft();
    if (AskReader.isTooLong(phrase, draft)) {
      return AxisReading.fault(draft.faults().get(0).message());
    }
    AskReading reading =
        reader.read(new Words(phrase, new Tokenizer(phrase, draft).tokens()), draft, phrase);
    if (reading.problem().isEmpty()) {
      return new AxisReading(
          Optional.empty(),
          reading.faults().stream().map(fault -> said(axis, fault, phrase)).distinct().toList());
    }
    if (!axis.isSaidIn(draft)) {
      return AxisReading.fault("This says nothing about " + axis.id() + ". " + example(axis));
    }
    if (saysMore(axis, draft)) {
      return AxisReading.fault(
          "This says more than "
              + axis.id()
              + ". Put the rest into the ask, or vary it by itself.");
    }
    return AxisReading.of(
        new AxisValue(
            axis,
            phrase.replaceAll(",(?=\\p{L})", ", "),
            change(axis, draft, reading.problem().get())));
  }

  /**
   * Whether an ask leaves the length of the warm-up open, so that it goes by the minutes.
   *
   * @param ask that is read without faults
   */
  public boolean leavesWarmUpOpen(String ask) {
    AskDraft draft = new AskDraft();
    reader.read(new Words(ask, new Tokenizer(ask, draft).tokens()), draft, ask);
    return !draft.clock.get(ClockPart.WARM_UP).isSet();
  }

  private static String said(Axis axis, AskFault fault, String phrase) {
    boolean part = !fault.phrase().isBlank() && !fault.phrase().equals(phrase);
    return (part ? "\"" + fault.phrase() + "\": " : "")
        + fault.message()
        + (axis.hasFewValues() ? " " + example(axis) : "");
  }

  private static String example(Axis axis) {
    return "Say --vary " + axis.id() + "=\"" + axis.example() + "\", for example.";
  }

  private static boolean saysMore(Axis axis, AskDraft draft) {
    boolean others =
        Arrays.stream(Axis.values()).anyMatch(other -> other != axis && other.isSaidIn(draft));
    boolean around =
        draft.clock.entrySet().stream()
            .anyMatch(it -> it.getValue().isSet() && !ClockPart.INTERVALS.contains(it.getKey()));
    boolean shares =
        !draft.emphasis.isEmpty() || !draft.minSets.isEmpty() || !draft.removed.isEmpty();
    return others
        || around
        || shares && axis != Axis.TARGETS
        || !draft.withoutEquipment.isEmpty()
        || !draft.tracks.isEmpty()
        || !draft.include.isEmpty()
        || !draft.exclude.isEmpty()
        || !draft.likes.isEmpty()
        || !draft.dislikes.isEmpty()
        || !draft.kept.isEmpty();
  }

  private static AxisValue.Change change(Axis axis, AskDraft draft, Problem said) {
    return switch (axis) {
      case MINUTES -> problem -> problem.minutes = said.minutes();
      case EQUIPMENT -> problem -> problem.equipment = said.equipment();
      case LIMITATIONS -> problem -> problem.limitations = said.limitations();
      case LEVEL -> problem -> problem.level = said.level();
      case PAIRING -> problem -> problem.pairing = said.pairing();
      case TARGETS -> problem -> problem.targets = said.targets();
      case ROUNDS -> problem -> problem.rounds = said.clock().rounds();
      case SUPERSETS -> problem -> problem.perSuperset = said.clock().perSuperset();
      case SEED -> problem -> problem.seed = said.seed();
      case CLOCK -> {
        List<ClockPart> parts =
            ClockPart.INTERVALS.stream()
                .filter(part -> draft.clock.get(part).isSet())
                .collect(Collectors.toList());
        yield problem ->
            parts.forEach(part -> problem.seconds.put(part, draft.clock.get(part).or(0)));
      }
    };
  }
}
