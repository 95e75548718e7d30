package counterset.typed;

import counterset.model.Exercise;
import java.util.Optional;

/** One exercise of the session while it is being read. Lives for one reading. */
final class Item {

  final Source source;
  final Segment segment;
  final Wanted wanted;
  final int start;
  final int end;
  final boolean sided;
  final Optional<Note.OneSide> side;
  NameMatcher.Found found;

  Item(
      Source source,
      Segment segment,
      Wanted wanted,
      int start,
      int end,
      NameMatcher.Found found,
      boolean sided,
      Optional<Note.OneSide> side) {
    this.source = source;
    this.segment = segment;
    this.wanted = wanted;
    this.start = start;
    this.end = end;
    this.found = found;
    this.sided = sided;
    this.side = side;
  }

  boolean isClear() {
    return found.isClear();
  }

  Exercise exercise() {
    return found.exercise();
  }
}
