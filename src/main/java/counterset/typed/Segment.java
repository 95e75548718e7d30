package counterset.typed;

import counterset.ask.AskFault;
import counterset.ask.Heard;
import counterset.model.Owned;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands on a line for one exercise of a superset: words in parts that commas cut, and what is
 * said besides. Lives for one reading.
 */
final class Segment {

  /** Words between two commas, dashes or brackets. */
  record Piece(List<Word> words, boolean bracketed, int start, int end) {

    /** Whether it names equipment and nothing else. */
    boolean isEquipment() {
      return words.stream().noneMatch(word -> word.equipment().isEmpty());
    }
  }

  /** A note with its place. */
  record Noted(Note note, int start, int end) {}

  /** A phrase of the clock or of equipment, with its place. */
  record Said(Heard heard, int start, int end) {}

  /** A fault that stands only if no exercise explains the words. */
  record Suspect(AskFault fault, int start) {}

  /** Signs or numbers that mean nothing here, and why. */
  record Odd(int start, String message) {}

  /** What to say of a sign or a number that means nothing. */
  static final String UNKNOWN =
      "This is not understood here. A remark goes behind # or into brackets.";

  final List<Piece> pieces = new ArrayList<>();
  final List<Noted> notes = new ArrayList<>();
  final List<Said> clock = new ArrayList<>();
  final List<Said> equipment = new ArrayList<>();
  final List<Suspect> suspects = new ArrayList<>();
  final List<Odd> odd = new ArrayList<>();

  /** The words that may be a name, bracketed ones left out. */
  List<Word> words() {
    return pieces.stream()
        .filter(it -> !it.bracketed())
        .flatMap(it -> it.words().stream())
        .toList();
  }

  /** All words, bracketed ones included. */
  List<Word> allWords() {
    return pieces.stream().flatMap(it -> it.words().stream()).toList();
  }

  boolean hasWords() {
    return !words().isEmpty();
  }

  boolean isEmpty() {
    return pieces.isEmpty() && notes.isEmpty() && clock.isEmpty() && odd.isEmpty();
  }

  boolean isSided() {
    return notes.stream().anyMatch(it -> it.note().sides());
  }

  List<Owned> owned() {
    return equipment.stream().flatMap(it -> it.heard().equipment().stream()).toList();
  }
}
