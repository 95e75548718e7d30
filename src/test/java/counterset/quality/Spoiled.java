package counterset.quality;

import java.util.List;
import java.util.stream.Stream;

/**
 * A reference with one fault put in.
 *
 * @param what was done, in words
 * @param before the session as its maker meant it, compiled with whatever came in
 */
record Spoiled(Kind kind, int reference, String what, Judged before, Judged after) {

  /** What was done to it. */
  enum Kind {
    LAST_RESORT("last resort in a place"),
    EASY("easy exercise in a place"),
    TWIN("twin of another place"),
    UNASKED("unasked work in a place"),
    BARE("body-weight version of a loaded lift"),
    REVERSED("order reversed"),
    FLOOR_FIRST("floor superset moved to the front"),
    SWAPPED("partners swapped between two supersets");

    final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** How much one constraint holds for the fault; negative where it holds against it. */
  record Gain(String constraint, int points) {}

  boolean isRankedBelow() {
    return after.points().compareTo(before.points()) < 0;
  }

  /** Whether it is ranked below if no rule counts, only wishes and points. */
  boolean isBelowWithoutRules() {
    Judged.Points one = after.points();
    Judged.Points other = before.points();
    return one.withoutRules().compareTo(other.withoutRules()) < 0;
  }

  /** What changes, what speaks most for the fault first. */
  List<Gain> gains() {
    Judged.Points then = after.points();
    Judged.Points first = before.points();
    return Stream.concat(then.by().keySet().stream(), first.by().keySet().stream())
        .distinct()
        .map(id -> new Gain(id, then.of(id) - first.of(id)))
        .filter(gain -> gain.points() != 0)
        .sorted((a, b) -> b.points() - a.points())
        .toList();
  }
}
