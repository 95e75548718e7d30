package counterset.ask;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Cuts the ask for a week into what holds for all days and what only holds for some.
 *
 * <p>A day binds what stands with it between two commas: before it ("lower Mon and Thu") or after
 * it ("Mon: lower"). Days alone name the days of the week; right after a comma they go on with the
 * days before it ("lower Mon, Thu").
 */
final class WeekParts {

  /**
   * A stretch of the ask.
   *
   * @param from its first place
   * @param to the place after it
   * @param days that it holds for; empty for all
   */
  record Part(int from, int to, Set<DayOfWeek> days) {

    boolean holds(DayOfWeek day, int all) {
      return isShared(all) || days.contains(day);
    }

    /** What holds for each of the days by name holds for all of them. */
    boolean isShared(int all) {
      return days.isEmpty() || days.size() == all;
    }
  }

  /** Words, or days. */
  private record Piece(int from, int to, Set<DayOfWeek> days) {

    boolean isDays() {
      return !days.isEmpty();
    }
  }

  private final Words words;
  private final WeekDraft week;
  private final List<Part> parts = new ArrayList<>();
  private final BitSet taken = new BitSet();
  private final Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);

  /** The first of the parts that the days of the clause before hold for, -1 if it has none. */
  private int open = -1;

  private WeekParts(Words words, WeekDraft week) {
    this.words = words;
    this.week = week;
  }

  static WeekParts read(Words words, WeekDraft week) {
    WeekParts parts = new WeekParts(words, week);
    int from = 0;
    for (int at = 0; at <= words.size(); at++) {
      boolean inside =
          at < words.size()
              && (!words.isBreak(at) || words.is(at, ":") || DayList.isDash(words, at));
      if (!inside) {
        parts.clause(from, at);
        from = at + 1;
      }
    }
    return parts;
  }

  List<Part> parts() {
    return parts;
  }

  /** Whether a place is about the week itself. */
  boolean isTaken(int at) {
    return taken.get(at);
  }

  /** All days that are named, Monday first. */
  Set<DayOfWeek> days() {
    return days;
  }

  private void clause(int from, int to) {
    List<Piece> pieces = pieces(from, to);
    pieces.forEach(piece -> days.addAll(piece.days()));
    if (pieces.isEmpty()) {
      return;
    }
    int before = open;
    open = -1;
    boolean first = pieces.get(0).isDays();
    boolean last = pieces.get(pieces.size() - 1).isDays();
    if (pieces.size() == 1) {
      alone(pieces.get(0), before >= 0 && words.is(from - 1, ",") ? before : parts.size());
    } else if (first != last) {
      for (int i = 0; i < pieces.size(); i += 2) {
        Piece text = pieces.get(first ? i + 1 : i);
        open = first ? -1 : parts.size();
        parts.add(new Part(text.from(), text.to(), pieces.get(first ? i : i + 1).days()));
      }
    } else if (pieces.size() == 3 && !first) {
      Set<DayOfWeek> both = pieces.get(1).days();
      parts.add(new Part(pieces.get(0).from(), pieces.get(0).to(), both));
      parts.add(new Part(pieces.get(2).from(), pieces.get(2).to(), both));
    } else {
      week.faults.fault(
          words.span(from, to),
          "It is not clear which day has what. Put a comma after each, such as \"lower Mon and Thu,"
              + " upper Tue\".");
    }
  }

  private void alone(Piece piece, int lengthened) {
    if (!piece.isDays()) {
      parts.add(new Part(piece.from(), piece.to(), Set.of()));
      return;
    }
    for (int i = lengthened; i < parts.size(); i++) {
      Part part = parts.get(i);
      Set<DayOfWeek> more = EnumSet.copyOf(part.days());
      more.addAll(piece.days());
      parts.set(i, new Part(part.from(), part.to(), more));
      open = lengthened;
    }
  }

  /** Words and days in turn; what is said of the week itself is taken out. */
  private List<Piece> pieces(int from, int to) {
    List<Piece> pieces = new ArrayList<>();
    int at = from;
    while (at < to) {
      DayList list = DayList.read(words, at).orElse(null);
      WeekWords.Cut cut = list == null ? WeekWords.read(words, at).orElse(null) : null;
      if (list != null) {
        add(pieces, new Piece(at, list.end(), list.days()));
      } else if (cut != null) {
        cut.effect().accept(week);
        taken.set(at, cut.end());
      } else if (!words.isSeparator(at)) {
        add(pieces, new Piece(at, at + 1, Set.of()));
      }
      at = list != null ? list.end() : cut != null ? cut.end() : at + 1;
    }
    return pieces;
  }

  private static void add(List<Piece> pieces, Piece next) {
    Piece last = pieces.isEmpty() ? next : pieces.get(pieces.size() - 1);
    if (last == next || last.isDays() != next.isDays()) {
      pieces.add(next);
      return;
    }
    Set<DayOfWeek> both = EnumSet.noneOf(DayOfWeek.class);
    both.addAll(last.days());
    both.addAll(next.days());
    pieces.set(pieces.size() - 1, new Piece(last.from(), next.to(), both));
  }
}
