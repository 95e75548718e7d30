package counterset.typed;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something said of an exercise besides its name.
 *
 * @param end the token after it
 * @param as what it was taken for, in words
 * @param sides whether it speaks of sides
 * @param one the only side that it names
 */
record Note(
    int end,
    String as,
    boolean sides,
    Optional<OneSide> one,
    OptionalInt rounds,
    OptionalInt work) {

  /** A side of the body. */
  enum OneSide {
    LEFT,
    RIGHT
  }

  static Note repetitions(int end, String count) {
    return new Note(
        end,
        count + "; the clock counts seconds, so they change nothing",
        false,
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  static Note rounds(int end, int count) {
    return new Note(
        end,
        count + (count == 1 ? " round" : " rounds"),
        false,
        Optional.empty(),
        OptionalInt.of(count),
        OptionalInt.empty());
  }

  static Note work(int end, int seconds) {
    return new Note(
        end,
        seconds + " s of work",
        false,
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(seconds));
  }

  static Note bothSides(int end) {
    return side(end, "both sides", Optional.empty());
  }

  static Note oneSide(int end, OneSide side) {
    String as = side == OneSide.LEFT ? "the left side" : "the right side";
    return side(end, as, Optional.of(side));
  }

  private static Note side(int end, String as, Optional<OneSide> one) {
    return new Note(end, as, true, one, OptionalInt.empty(), OptionalInt.empty());
  }

  static Note plain(int end, String as) {
    return new Note(end, as, false, Optional.empty(), OptionalInt.empty(), OptionalInt.empty());
  }

  /** The same, reaching further, with both sides named. */
  Note eachSide(int further) {
    return new Note(further, as, true, one, rounds, work);
  }
}
