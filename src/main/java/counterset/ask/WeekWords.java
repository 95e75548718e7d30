package counterset.ask;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads what only a week is asked for: "4 sessions", "3 times a week", "20 min each", "48 h
 * recovery as a rule".
 */
final class WeekWords {

  /**
   * Words of a week that were understood.
   *
   * @param end the place after them
   */
  record Cut(int end, Consumer<WeekDraft> effect) {}

  private static final int MOST_SESSIONS = 7;
  private static final int RECOVERY_HOURS = 48;
  private static final Set<String> OF_RECOVERY =
      Set.of(
          "of",
          "recovery",
          "rest",
          "apart",
          "between",
          "session",
          "the",
          "same",
          "muscle",
          "group");
  private static final Set<String> AS_RULE =
      Set.of("a", "as", "is", "must", "be", "rule", "always", "strict", "strictly");

  private WeekWords() {}

  /** The words that begin at a place. */
  static Optional<Cut> read(Words words, int at) {
    return recovery(words, at)
        .or(() -> count(words, at))
        .or(() -> each(words, at))
        .or(() -> week(words, at));
  }

  private static Optional<Cut> count(Words words, int at) {
    Numeral number = number(words, at);
    if (number == null) {
      return Optional.empty();
    }
    int unit = number.end();
    if (words.is(unit, "week")) {
      return number.isWhole(1, 1)
          ? Optional.of(new Cut(unit + 1, week -> {}))
          : fault(
              words,
              at,
              unit + 1,
              "An ask is for one week. For several add --weeks, such as --weeks 4.");
    }
    int end = perWeek(words, unit);
    if (words.is(unit, "session", "workout", "day")) {
      end = perWeek(words, unit + 1);
    } else if (words.is(unit, "time", "x") && perWeek(words, unit + 1) > unit + 1) {
      end = perWeek(words, unit + 1);
    } else if (end == unit) {
      return Optional.empty();
    }
    if (!number.isWhole(1, MOST_SESSIONS)) {
      return fault(
          words, at, end, "A week has from 1 to 7 sessions, at most one a day. Name fewer.");
    }
    Span span = words.span(at, end);
    return Optional.of(new Cut(end, week -> week.sessions.set(number.whole(), span, week.faults)));
  }

  private static Numeral number(Words words, int at) {
    if (words.is(at, "once", "twice")) {
      return perWeek(words, at + 1) > at + 1
          ? new Numeral(words.is(at, "once") ? 1 : 2, at + 1)
          : null;
    }
    Numeral number = Numeral.read(words, at).orElse(null);
    return number != null
            && words.is(number.end(), "session", "workout", "day", "time", "x", "week")
        ? number
        : null;
  }

  /** After "a week", "per week" and the like, if that stands here. */
  private static int perWeek(Words words, int at) {
    if (words.is(at, "weekly")) {
      return at + 1;
    }
    int week = words.skip(at, "a", "per", "each", "every", "in", "the", "/");
    return week > at && words.is(week, "week") ? week + 1 : at;
  }

  /** "20 min each", "20 min per session": what is said once holds for all days anyway. */
  private static Optional<Cut> each(Words words, int at) {
    if (words.is(at, "each", "per", "a", "every", "all")
        && words.is(at + 1, "session", "workout", "time", "day")) {
      return Optional.of(new Cut(at + 2, week -> {}));
    }
    boolean alone = words.is(at, "each") && (at + 1 == words.size() || words.isBreak(at + 1));
    return alone ? Optional.of(new Cut(at + 1, week -> {})) : Optional.empty();
  }

  private static Optional<Cut> week(Words words, int at) {
    int week = words.skip(at, "a", "the", "one", "this", "next", "per", "each", "every");
    return words.is(week, "week", "weekly")
        ? Optional.of(new Cut(words.skip(week + 1, "of", "with", ":"), draft -> {}))
        : Optional.empty();
  }

  private static Optional<Cut> recovery(Words words, int at) {
    Numeral hours = Numeral.read(words, at).orElse(null);
    boolean counted = hours != null && words.is(hours.end(), "h", "hr", "hour");
    if (!counted && !words.is(at, "recovery")) {
      return Optional.empty();
    }
    int of = counted ? words.skip(hours.end() + 1, "of") : at;
    if (!words.is(of, "recovery", "apart", "between", "as")) {
      return Optional.empty();
    }
    int rule = of;
    while (OF_RECOVERY.contains(words.at(rule).key())) {
      rule++;
    }
    int end = rule;
    while (AS_RULE.contains(words.at(end).key())) {
      end++;
    }
    if (!words.is(end - 1, "rule", "always", "strict", "strictly", "must")) {
      return fault(
          words,
          at,
          end,
          "48 h of recovery are a wish anyway. To make them a rule say \"48 h recovery as a rule\".");
    }
    if (counted && !hours.isWhole(RECOVERY_HOURS, RECOVERY_HOURS)) {
      return fault(
          words, at, end, "Recovery is counted as 48 hours. Say \"48 h recovery as a rule\".");
    }
    Span span = words.span(at, end);
    return Optional.of(new Cut(end, week -> week.recoveryIsRule.set(true, span, week.faults)));
  }

  private static Optional<Cut> fault(Words words, int at, int end, String message) {
    Span span = words.span(at, end);
    return Optional.of(new Cut(end, week -> week.faults.fault(span, message)));
  }
}
