package counterset.ask;

import java.util.List;
import java.util.Optional;

/** A line of another text, cut into tokens as an ask is. Places outside hold nothing. */
public final class Line {

  private final Words words;
  private final List<PhraseReader> clock;
  private final PhraseReader equipment;

  Line(Words words, List<PhraseReader> clock, PhraseReader equipment) {
    this.words = words;
    this.clock = clock;
    this.equipment = equipment;
  }

  public int size() {
    return words.size();
  }

  public Token at(int place) {
    return words.at(place);
  }

  /** Whether one of the keys stands at a place. */
  public boolean is(int place, String... keys) {
    return words.is(place, keys);
  }

  /** The longest phrase about the clock that begins at a place, wrong ones included. */
  public Optional<Heard> clock(int place) {
    Phrase best = null;
    for (PhraseReader reader : clock) {
      Phrase phrase = reader.read(words, place).orElse(null);
      if (phrase != null && (best == null || phrase.end() > best.end())) {
        best = phrase;
      }
    }
    return Optional.ofNullable(best).filter(it -> it.effect().isPresent()).map(Heard::of);
  }

  /** Equipment that is named at a place, with what is said of its count and mass. */
  public Optional<Heard> equipment(int place) {
    return equipment.read(words, place).filter(it -> it.effect().isPresent()).map(Heard::of);
  }

  /** The place after a mass without the name of what has it, such as "8 kg"; else the place. */
  public int afterMass(int place) {
    return MassList.read(words, place).map(MassList::end).orElse(place);
  }

  /** Whether a place is a number in figures or words. */
  public boolean isCount(int place) {
    return Numeral.read(words, place).isPresent();
  }
}
