package counterset.typed;

import counterset.ask.Heard;
import counterset.ask.Line;
import counterset.ask.Phrases;
import counterset.ask.Token;
import counterset.model.Owned;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Cuts a line into what stands for one exercise each. */
final class SegmentReader {

  private static final Map<String, String> COUNTS = Map.of("1", "single", "2", "two", "3", "three");

  private final Phrases phrases;
  private final Shorthand shorthand;
  private final EquipmentWords equipment;

  SegmentReader(Phrases phrases, Shorthand shorthand, EquipmentWords equipment) {
    this.phrases = phrases;
    this.shorthand = shorthand;
    this.equipment = equipment;
  }

  /** The segments of a line; empty ones are left out. */
  List<Segment> read(Source source) {
    Line line = phrases.line(source.text(), shorthand::of);
    return new Run(line, equipment).segments();
  }

  /** One reading of one line. */
  private static final class Run {

    private final Line line;
    private final NoteReader notes;
    private final EquipmentWords equipment;
    private final List<Segment> segments = new ArrayList<>();
    private Segment segment = new Segment();
    private List<Word> words = new ArrayList<>();
    private boolean bracketed;
    private int pieceStart = -1;
    private int pieceEnd;

    Run(Line line, EquipmentWords equipment) {
      this.line = line;
      this.notes = new NoteReader(line);
      this.equipment = equipment;
    }

    List<Segment> segments() {
      int at = 0;
      while (at < line.size()) {
        at = next(at);
      }
      endSegment();
      return segments;
    }

    private int next(int at) {
      Token token = line.at(at);
      Optional<Note> note = notes.read(at);
      Heard clock = line.clock(at).orElse(null);
      boolean clockHolds =
          clock != null
              && clock.faults().isEmpty()
              && clock.saysClock()
              && goesFurther(clock, note);
      if (clockHolds) {
        segment.clock.add(new Segment.Said(clock, start(at), end(clock.end())));
        return clock.end();
      }
      Optional<Heard> held = line.equipment(at);
      boolean more = held.isPresent() && (note.isEmpty() || held.get().end() > note.get().end());
      int mass = line.afterMass(at);
      if (note.isEmpty() && !more && mass > at) {
        segment.odd.add(
            new Segment.Odd(
                start(at), "Masses are in kilograms: 1 lb is 0.454 kg. Say the masses in kg."));
        return mass;
      }
      if (note.isPresent() && !more) {
        segment.notes.add(new Segment.Noted(note.get(), start(at), end(note.get().end())));
        return note.get().end();
      }
      if (clock != null) {
        clock.faults().forEach(it -> segment.suspects.add(new Segment.Suspect(it, start(at))));
      }
      if (held.isPresent()) {
        return equipment(at, held.get());
      }
      return token.isWord() || token.isNumber() ? word(at) : sign(at);
    }

    private static boolean goesFurther(Heard clock, Optional<Note> note) {
      return note.isEmpty() || clock.end() > note.get().end() || clock.rounds().isPresent();
    }

    private int equipment(int at, Heard heard) {
      if (!heard.faults().isEmpty()) {
        heard.faults().forEach(it -> segment.suspects.add(new Segment.Suspect(it, start(at))));
        return word(at);
      }
      Set<String> ids = heard.equipment().stream().map(Owned::id).collect(Collectors.toSet());
      segment.equipment.add(new Segment.Said(heard, start(at), end(heard.end())));
      for (int i = at; i < heard.end(); i++) {
        if (line.at(i).isWord()
            && !line.is(i, "x", "kg", "kilo", "and", "heavy", "medium", "light", "pair")) {
          add(line.at(i).key(), ids, i);
        }
      }
      return heard.end();
    }

    private int word(int at) {
      Token token = line.at(at);
      if (token.isNumber()) {
        return count(at);
      }
      boolean plus = token.key().equals("plus") && token.text().equals("+");
      if (plus || line.is(at, "into") || line.is(at, "then") && !words.isEmpty()) {
        endSegment();
      } else {
        add(token.key(), equipment.loosely(token.key()), at);
      }
      return at + 1;
    }

    /** A number before a name counts repetitions; "1 arm" is part of one. */
    private int count(int at) {
      String word = COUNTS.get(line.at(at).key());
      if (word != null && line.is(at + 1, "arm", "leg", "hand", "part")) {
        add(word, Set.of(), at);
      } else if (words.isEmpty() && line.at(at + 1).isWord() && !line.is(at + 1, "x")) {
        Note note = Note.repetitions(at + 1, line.at(at).text() + " repetitions");
        segment.notes.add(new Segment.Noted(note, start(at), end(at + 1)));
      } else {
        odd(at);
      }
      return at + 1;
    }

    private int sign(int at) {
      String key = line.at(at).key();
      switch (key) {
        case "(", "[" -> {
          endPiece();
          bracketed = true;
          pieceStart = start(at);
        }
        case ")", "]" -> {
          pieceEnd = end(at + 1);
          endPiece();
          bracketed = false;
        }
        case "/" -> {
          if (!line.at(at - 1).text().equalsIgnoreCase("w")) {
            endSegment();
          }
        }
        case "|", ";", ">" -> endSegment();
        case ",",
            "-",
            ":",
            ".",
            "!",
            "?",
            "\"",
            "*",
            "_",
            "=",
            "~",
            "\u201c",
            "\u201d",
            "\u2026" -> {
          if (!bracketed) {
            endPiece();
          }
        }
        default -> odd(at);
      }
      return at + 1;
    }

    /** Something that means nothing here; several signs in a row are told of once. */
    private void odd(int at) {
      boolean again =
          at > 0
              && line.at(at - 1).kind() == Token.Kind.SYMBOL
              && line.at(at - 1).end() == start(at);
      if (!again) {
        segment.odd.add(new Segment.Odd(start(at), Segment.UNKNOWN));
      }
    }

    private void add(String key, Set<String> ids, int at) {
      if (pieceStart < 0) {
        pieceStart = start(at);
      }
      pieceEnd = end(at + 1);
      if (!NoteWords.SMALL.contains(key)) {
        words.add(new Word(key, ids, start(at), end(at + 1)));
      }
    }

    private void endPiece() {
      if (!words.isEmpty()) {
        segment.pieces.add(new Segment.Piece(List.copyOf(words), bracketed, pieceStart, pieceEnd));
      }
      words = new ArrayList<>();
      pieceStart = -1;
    }

    private void endSegment() {
      endPiece();
      bracketed = false;
      if (!segment.isEmpty()) {
        segments.add(segment);
      }
      segment = new Segment();
    }

    private int start(int at) {
      return line.at(at).start();
    }

    private int end(int at) {
      return line.at(at - 1).end();
    }
  }
}
