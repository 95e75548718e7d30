package counterset.typed;

import counterset.ask.Line;
import counterset.ask.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads repetitions, rounds, sides, seconds and masses that stand beside the name of an exercise.
 *
 * <p>Up to five times is taken for rounds, more for repetitions (common practice, no source).
 */
final class NoteReader {

  private static final int MOST_ROUNDS = 5;

  private final Line line;

  NoteReader(Line line) {
    this.line = line;
  }

  /** The note that begins at a token. */
  Optional<Note> read(int at) {
    return side(at).or(() -> mass(at)).or(() -> times(at)).or(() -> number(at)).or(() -> words(at));
  }

  private Optional<Note> words(int at) {
    if (line.is(at, "amrap")) {
      return Optional.of(Note.repetitions(at + 1, "as many repetitions as possible"));
    }
    int repeat = line.is(at, "repeat") ? at + 1 : at;
    if (line.is(repeat, "twice")) {
      return Optional.of(Note.rounds(repeat + 1, 2));
    }
    return Optional.empty();
  }

  private Optional<Note> side(int at) {
    if (line.is(at, "e") && line.is(at + 1, "/") && line.is(at + 2, "s")) {
      return Optional.of(Note.bothSides(at + 3));
    }
    if (line.is(at, "switch", "change", "swap") && line.is(at + 1, "side", "leg", "arm")) {
      return Optional.of(Note.bothSides(at + 2));
    }
    if (line.is(at, "each", "per", "both", "ea", "every")) {
      int end = limb(at + 1) ? at + 2 : at + 1;
      return line.is(at, "per") && end == at + 1
          ? Optional.empty()
          : Optional.of(Note.bothSides(end));
    }
    Optional<Note.OneSide> first = oneSide(at);
    if (first.isEmpty() || line.is(at, "l", "r") && line.at(at + 1).isWord() && !limb(at + 1)) {
      return Optional.empty();
    }
    int end = limb(at + 1) ? at + 2 : at + 1;
    int next = end;
    while (line.is(next, "then", "and", "/", "plus", ",", "&")) {
      next++;
    }
    Optional<Note.OneSide> second = next > end ? oneSide(next) : Optional.empty();
    if (second.isPresent() && !second.equals(first)) {
      return Optional.of(Note.bothSides(limb(next + 1) ? next + 2 : next + 1));
    }
    return Optional.of(Note.oneSide(end, first.get()));
  }

  private boolean limb(int at) {
    return NoteWords.SIDE.contains(line.at(at).key());
  }

  private Optional<Note.OneSide> oneSide(int at) {
    if (line.is(at, "left", "l")) {
      return Optional.of(Note.OneSide.LEFT);
    }
    return line.is(at, "right", "r") ? Optional.of(Note.OneSide.RIGHT) : Optional.empty();
  }

  /** "8 kg", "2 x 8 kg". */
  private Optional<Note> mass(int at) {
    int start = line.at(at).isNumber() && line.is(at + 1, "x") ? at + 2 : at;
    int end = line.afterMass(start);
    if (end == start || !line.at(start).isNumber()) {
      return Optional.empty();
    }
    return line.is(end - 1, "kg", "kilo", "kilogram", "kilogramme")
        ? Optional.of(Note.mass(end, kg(start, end)))
        : Optional.empty();
  }

  private List<Double> kg(int from, int end) {
    List<Double> kg = new ArrayList<>();
    for (int i = from; i < end; i++) {
      if (line.at(i).isNumber()) {
        kg.add(Double.valueOf(line.at(i).key()));
      }
    }
    return kg;
  }

  /** "x 12", "x2", "3 x 10", "2x". */
  private Optional<Note> times(int at) {
    Integer first = whole(at);
    if (first != null && line.is(at + 1, "x")) {
      Integer second = whole(at + 2);
      if (second == null) {
        return Optional.of(Note.rounds(at + 2, first));
      }
      Note rounds = Note.rounds(range(at + 2), first);
      String as = rounds.as() + ", " + second + " repetitions each, which the clock does not use";
      return Optional.of(
          eachSide(
              new Note(
                  skipRep(rounds.end()),
                  as,
                  false,
                  rounds.one(),
                  rounds.rounds(),
                  rounds.work(),
                  rounds.kg())));
    }
    Integer count = line.is(at, "x") ? whole(at + 1) : null;
    if (count == null) {
      return Optional.empty();
    }
    int end = range(at + 1);
    boolean rounds = count <= MOST_ROUNDS && end == at + 2 && skipRep(end) == end;
    return Optional.of(
        rounds
            ? Note.rounds(end, count)
            : eachSide(Note.repetitions(skipRep(end), text(at + 1, end))));
  }

  private Optional<Note> number(int at) {
    Integer count = whole(at);
    if (count == null) {
      return brokenMinutes(at);
    }
    int end = range(at);
    if (skipRep(end) > end) {
      return Optional.of(eachSide(Note.repetitions(skipRep(end), text(at, end))));
    }
    if (line.is(end, "set", "time")) {
      return Optional.of(Note.rounds(end + 1, count));
    }
    if (line.is(end, "s", "sec", "second") && end == at + 1) {
      return Optional.of(eachSide(Note.work(end + 1, count)));
    }
    Note repetitions = Note.repetitions(end, text(at, end));
    Note sided = eachSide(repetitions);
    return sided.sides() || end > at + 1 && line.is(at + 1, "-")
        ? Optional.of(sided)
        : Optional.empty();
  }

  /** "1.5 min". */
  private Optional<Note> brokenMinutes(int at) {
    if (!line.at(at).isNumber() || !line.is(at + 1, "min", "minute", "m")) {
      return Optional.empty();
    }
    double seconds = 60 * Double.parseDouble(line.at(at).key());
    return seconds == Math.rint(seconds) && seconds > 0 && seconds < 3600
        ? Optional.of(Note.work(at + 2, (int) seconds))
        : Optional.empty();
  }

  private String text(int from, int end) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < end; i++) {
      text.append(line.at(i).text());
    }
    return text + " repetitions";
  }

  /** Adds "each side", "/side", "e/s" behind a number. */
  private Note eachSide(Note note) {
    int at = line.is(note.end(), "/") ? note.end() + 1 : note.end();
    if (at > note.end() && limb(at)) {
      return note.eachSide(at + 1);
    }
    if (line.is(note.end(), "a") && limb(note.end() + 1)) {
      return note.eachSide(note.end() + 2);
    }
    return side(note.end())
        .filter(side -> side.one().isEmpty())
        .map(side -> note.eachSide(side.end()))
        .orElse(note);
  }

  private int skipRep(int at) {
    return line.is(at, "rep", "repetition") ? at + 1 : at;
  }

  /** The place after a number or a range of numbers. */
  private int range(int at) {
    boolean more = line.is(at + 1, "-", "to", "/") && whole(at + 2) != null;
    return more ? at + 3 : at + 1;
  }

  private Integer whole(int at) {
    Token token = line.at(at);
    return token.isNumber() && token.key().matches("\\d{1,3}")
        ? Integer.valueOf(token.key())
        : null;
  }
}
