package counterset.ask;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Days that belong together: "Mon", "Mon and Thu", "Mon to Fri", "Mon Tue Thu", "weekdays", "every
 * day".
 *
 * @param end the place after it
 */
record DayList(Set<DayOfWeek> days, int end) {

  private static final Set<DayOfWeek> WEEKEND = EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

  /** The list that begins at a place; one that goes on after a comma is another list. */
  static Optional<DayList> read(Words words, int at) {
    DayList list =
        one(words, words.skip(at, "on", "every", "each")).or(() -> daily(words, at)).orElse(null);
    while (list != null) {
      int next = words.skip(list.end(), "and", "plus", "/", "on");
      DayList more = one(words, next).orElse(null);
      if (more == null) {
        break;
      }
      Set<DayOfWeek> both = EnumSet.copyOf(list.days());
      both.addAll(more.days());
      list = new DayList(both, more.end());
    }
    return Optional.ofNullable(list);
  }

  private static Optional<DayList> daily(Words words, int at) {
    if (words.is(at, "daily")) {
      return Optional.of(new DayList(EnumSet.allOf(DayOfWeek.class), at + 1));
    }
    return words.is(at, "every") && words.is(at + 1, "day")
        ? Optional.of(new DayList(EnumSet.allOf(DayOfWeek.class), at + 2))
        : Optional.empty();
  }

  private static Optional<DayList> one(Words words, int at) {
    if (words.is(at, "weekday")) {
      return Optional.of(new DayList(EnumSet.complementOf(EnumSet.copyOf(WEEKEND)), at + 1));
    }
    if (words.is(at, "weekend")) {
      return Optional.of(new DayList(EnumSet.copyOf(WEEKEND), at + 1));
    }
    DayOfWeek first = DayNames.at(words, at).orElse(null);
    if (first == null) {
      return Optional.empty();
    }
    int next = afterTo(words, at + 1);
    DayOfWeek last =
        next > at + 1 || words.isHyphenated(at) ? DayNames.at(words, next).orElse(null) : null;
    return Optional.of(
        last == null
            ? new DayList(EnumSet.of(first), at + 1)
            : new DayList(range(first, last), next + 1));
  }

  private static int afterTo(Words words, int at) {
    return words.is(at, "to", "through", "till", "until") || isDash(words, at) ? at + 1 : at;
  }

  /** A dash with spaces around it stands between phrases, unless it stands between days. */
  static boolean isDash(Words words, int at) {
    return words.isBreak(at)
        && words.is(at, "-")
        && DayNames.at(words, at - 1).isPresent()
        && DayNames.at(words, at + 1).isPresent();
  }

  private static Set<DayOfWeek> range(DayOfWeek first, DayOfWeek last) {
    Set<DayOfWeek> days = EnumSet.of(first);
    for (DayOfWeek day = first; day != last; day = day.plus(1)) {
      days.add(day.plus(1));
    }
    return days;
  }
}
