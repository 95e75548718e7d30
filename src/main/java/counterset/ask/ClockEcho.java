package counterset.ask;

import counterset.model.Intervals;
import java.util.ArrayList;
import java.util.List;

/** Says how the clock of an ask was read. */
final class ClockEcho {

  private record Part(String text, boolean said) {}

  private final AskDraft draft;
  private final Intervals clock;

  ClockEcho(AskDraft draft, Intervals clock) {
    this.draft = draft;
    this.clock = clock;
  }

  List<String> lines() {
    List<Part> work = new ArrayList<>(List.of(part(ClockPart.WORK, clock.work())));
    if (clock.between() > 0) {
      work.add(part(ClockPart.SWITCH, clock.between()));
    }
    work.add(part(ClockPart.REST, clock.rest()));
    List<Part> around =
        List.of(
            part(ClockPart.GET_READY, clock.getReady()),
            part(ClockPart.WARM_UP, clock.warmUp()),
            part(ClockPart.COOL_DOWN, clock.coolDown()));
    List<Part> shape =
        List.of(
            new Part(kind(), draft.perSuperset.isSet()),
            new Part(
                clock.rounds() + (clock.rounds() == 1 ? " round" : " rounds"),
                draft.rounds.isSet()));
    return List.of(
        "clock: " + join(work), "around it: " + join(around), "supersets: " + join(shape));
  }

  private Part part(ClockPart part, int seconds) {
    String text = seconds == 0 ? "no " + part.text() : seconds + " s " + part.text();
    return new Part(text, draft.clock.get(part).isSet());
  }

  private String kind() {
    return switch (clock.perSuperset()) {
      case 1 -> "one exercise each (straight sets)";
      case 2 -> "two exercises each";
      default -> "three exercises each (tri-sets)";
    };
  }

  /** Marks what is assumed, once if that is everything. */
  private static String join(List<Part> parts) {
    boolean none = parts.stream().noneMatch(Part::said);
    List<String> texts =
        parts.stream().map(it -> it.said() || none ? it.text() : it.text() + " (assumed)").toList();
    return String.join(", ", texts) + (none ? " (assumed)" : "");
  }
}
