package counterset.problem;

import counterset.json.Cursor;
import counterset.model.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The exercises of the warm-up and of the cool-down, from the timeline of a plan. */
record Interludes(List<String> warmUp, List<String> coolDown) {

  private static final String WARM_UP = "warm-up";
  private static final String COOL_DOWN = "cool-down";

  static Interludes read(Cursor timeline, Catalogue catalogue) {
    Interludes interludes = new Interludes(new ArrayList<>(), new ArrayList<>());
    Set<String> known = catalogue.exercises().keySet();
    Optional<String> left = Optional.empty();
    for (Cursor interval : timeline.elements()) {
      String kind = text(interval, "kind").orElse("");
      Optional<String> exercise = Optional.empty();
      if (kind.equals(WARM_UP) || kind.equals(COOL_DOWN)) {
        exercise = interval.field("exercise").id("exercise", known);
        boolean otherSide =
            side(interval, "right") && exercise.isPresent() && exercise.equals(left);
        List<String> list = kind.equals(WARM_UP) ? interludes.warmUp() : interludes.coolDown();
        exercise.filter(id -> !otherSide).ifPresent(list::add);
      }
      left = side(interval, "left") ? exercise : Optional.empty();
    }
    return interludes;
  }

  private static boolean side(Cursor interval, String side) {
    return text(interval, "side").filter(side::equals).isPresent();
  }

  private static Optional<String> text(Cursor interval, String field) {
    return interval.field(field).isText() ? interval.field(field).text() : Optional.empty();
  }
}
