package counterset.typed;

import counterset.ask.ClockPart;
import counterset.ask.Heard;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;

/** What a phrase about the clock was taken for, in words. */
final class ClockText {

  private ClockText() {}

  static String of(Heard heard, Part section, boolean begun) {
    List<String> texts = new ArrayList<>();
    boolean around = heard.minutes().isPresent() && heard.seconds().isEmpty() && begun;
    heard
        .minutes()
        .ifPresent(
            minutes ->
                texts.add(
                    !around
                        ? minutes + (minutes == 1 ? " minute in all" : " minutes in all")
                        : 60 * minutes
                            + " s of "
                            + (section == Part.MAIN ? "work" : section.id())));
    for (ClockPart part : ClockPart.values()) {
      if (heard.seconds().containsKey(part)) {
        int seconds = heard.seconds().get(part);
        texts.add(seconds == 0 ? "no " + part.text() : seconds + " s of " + part.text());
      }
    }
    heard.rounds().ifPresent(n -> texts.add(n + (n == 1 ? " round" : " rounds")));
    heard
        .perSuperset()
        .ifPresent(n -> texts.add(n == 1 ? "straight sets" : n == 2 ? "supersets" : "tri-sets"));
    return String.join(", ", texts);
  }
}
