package counterset.typed;

import counterset.ask.ClockPart;
import counterset.model.Owned;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Gathers what the lines say besides the names of exercises. Lives for one reading. */
final class Sayings {

  /** What masses are taken for. */
  static final String MASS = "the mass; the score knows light, medium and heavy only";

  /**
   * Where something is said.
   *
   * @param begun whether an exercise or a heading stood before
   * @param group the superset that it is about; null if it is about none
   */
  record Where(Part section, boolean begun, Group group) {}

  final ClockSaid clock;
  final List<Owned> mentioned = new ArrayList<>();
  private final Report report;

  Sayings(Report report) {
    this.report = report;
    this.clock = new ClockSaid(report);
  }

  /**
   * Takes a line that names no exercise; seconds alone are a rest, or the length of the warm-up or
   * cool-down.
   *
   * @return whether it says that a rest follows
   */
  boolean line(Source source, List<Segment> all, Where where) {
    boolean rest = false;
    for (Segment segment : all) {
      rest |=
          segment.clock.stream().anyMatch(it -> it.heard().seconds().containsKey(ClockPart.REST));
      boolean around = where.section() != Part.MAIN;
      for (Segment.Noted noted : segment.notes) {
        OptionalInt work = noted.note().work();
        if (work.isPresent()) {
          ClockPart part =
              where.section() == Part.WARM_UP
                  ? ClockPart.WARM_UP
                  : where.section() == Part.COOL_DOWN ? ClockPart.COOL_DOWN : ClockPart.REST;
          clock.seconds(part, work.getAsInt(), source, noted.start());
          report.taken(
              source, noted.start(), noted.end(), work.getAsInt() + " s of " + part.text());
          rest |= !around;
        } else {
          note(noted, source, where);
        }
      }
      clock(segment, source, where);
      remarks(segment, source);
    }
    if (all.isEmpty()) {
      report.fault(source, source.first(), "Nothing here is understood. Remove it.");
    }
    return rest;
  }

  /** Takes what a segment says of the clock; minutes of a part of the session are that part's. */
  private void clock(Segment segment, Source source, Where where) {
    for (Segment.Said said : segment.clock) {
      OptionalInt minutes = said.heard().minutes();
      if (minutes.isPresent() && where.begun() && said.heard().seconds().isEmpty()) {
        ClockPart part =
            where.section() == Part.WARM_UP
                ? ClockPart.WARM_UP
                : where.section() == Part.COOL_DOWN ? ClockPart.COOL_DOWN : ClockPart.WORK;
        clock.seconds(part, 60 * minutes.getAsInt(), source, said.start());
      } else if (said.heard().rounds().isPresent() && where.group() != null) {
        rounds(where.group(), said.heard().rounds(), source, said.start());
      } else {
        clock.take(said.heard(), source, said.start());
      }
      report.taken(
          source,
          said.start(),
          said.end(),
          ClockText.of(said.heard(), where.section(), where.begun()));
    }
  }

  private void note(Segment.Noted noted, Source source, Where where) {
    OptionalInt rounds = noted.note().rounds();
    if (rounds.isPresent() && where.section() == Part.MAIN) {
      if (where.group() == null) {
        clock.rounds(rounds.getAsInt(), source, noted.start());
      } else {
        rounds(where.group(), rounds, source, noted.start());
      }
    }
    String as = noted.note().as();
    OptionalInt work = noted.note().work();
    if (work.isPresent() && where.section() == Part.MAIN) {
      clock.seconds(ClockPart.WORK, work.getAsInt(), source, noted.start());
    } else if (work.isPresent()) {
      as = work.getAsInt() + " s; the program gives each move its own seconds";
    }
    report.taken(source, noted.start(), noted.end(), as);
  }

  private void rounds(Group group, OptionalInt rounds, Source source, int start) {
    if (group.rounds.isPresent() && !group.rounds.equals(rounds)) {
      report.fault(
          source,
          start,
          "This superset has "
              + group.rounds.getAsInt()
              + " rounds by what stands before. Keep one of the two.");
      return;
    }
    group.rounds = rounds;
    group.roundsAt = source;
    group.roundsStart = start;
  }

  /** Takes all that is said beside the name of an exercise. */
  void beside(Segment segment, Source source, Where where) {
    segment.notes.forEach(noted -> note(noted, source, where));
    clock(segment, source, where);
    for (Segment.Said said : segment.equipment) {
      mentioned.addAll(said.heard().equipment());
      if (said.heard().equipment().stream().anyMatch(owned -> !owned.kg().isEmpty())) {
        report.taken(source, said.start(), said.end(), MASS);
      }
    }
    remarks(segment, source);
  }

  private void remarks(Segment segment, Source source) {
    segment.odd.forEach(odd -> report.fault(source, odd.start(), odd.message()));
    for (Segment.Piece piece : segment.pieces) {
      if (piece.bracketed() && !piece.isEquipment()) {
        report.taken(source, piece.start(), piece.end(), "a remark");
      }
    }
  }
}
