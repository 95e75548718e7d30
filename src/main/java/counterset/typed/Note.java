package counterset.typed;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something said of an exercise besides its name.
 *
 * @param end the token after it
 * @param as what it was taken for, in words
 * @param sides whether it speaks of sides
 * @param one the only side that it names
 * @param kg masses, in kilograms
 */
record Note(
    int end,
    String as,
    boolean sides,
    Optional<OneSide> one,
    OptionalInt rounds,
    OptionalInt work,
    List<Double> kg) {

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
        OptionalInt.empty(),
        List.of());
  }

  static Note rounds(int end, int count) {
    return new Note(
        end,
        count + (count == 1 ? " round" : " rounds"),
        false,
        Optional.empty(),
        OptionalInt.of(count),
        OptionalInt.empty(),
        List.of());
  }

  static Note work(int end, int seconds) {
    return new Note(
        end,
        seconds + " s of work",
        false,
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.of(seconds),
        List.of());
  }

  static Note bothSides(int end) {
    return side(end, "both sides", Optional.empty());
  }

  static Note oneSide(int end, OneSide side) {
    String as = side == OneSide.LEFT ? "the left side" : "the right side";
    return side(end, as, Optional.of(side));
  }

  private static Note side(int end, String as, Optional<OneSide> one) {
    return new Note(end, as, true, one, OptionalInt.empty(), OptionalInt.empty(), List.of());
  }

  static Note mass(int end, List<Double> kg) {
    return new Note(
        end, Sayings.MASS, false, Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), kg);
  }

  /** The same, reaching further, with both sides named. */
  Note eachSide(int further) {
    return new Note(further, as, true, one, rounds, work, kg);
  }
}
