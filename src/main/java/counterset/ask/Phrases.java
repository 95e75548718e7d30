package counterset.ask;

import counterset.model.Catalogue;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The parts of the language of asks that other texts of a coach share: lengths of the clock, shapes
 * of supersets, equipment with counts and masses. Immutable and safe to share.
 */
public final class Phrases {

  private final List<PhraseReader> clock;
  private final PhraseReader equipment;
  private final Set<String> keys = new LinkedHashSet<>();

  /** The phrases of a catalogue. */
  public Phrases(Catalogue catalogue) {
    Vocabulary vocabulary = Vocabulary.of(catalogue);
    this.clock =
        List.of(
            new DurationReader(new TimeLengths(vocabulary)),
            new ClockReader(),
            new ClockPartReader(vocabulary, new TimeLengths(vocabulary)),
            new ShapeReader(vocabulary));
    this.equipment = new EquipmentReader(vocabulary, catalogue);
    vocabulary.terms().forEach(term -> keys.addAll(Keys.ofName(term.name())));
  }

  /** The keys of all words that names are made of. */
  public Set<String> keys() {
    return Set.copyOf(keys);
  }

  /**
   * Cuts a line.
   *
   * @param spelling the keys that a key of a word stands for, mostly itself alone
   */
  public Line line(String text, Function<String, List<String>> spelling) {
    List<Token> tokens = new ArrayList<>();
    for (Token token : new Tokenizer(text, new AskDraft()).tokens()) {
      if (token.isWord()) {
        spelling
            .apply(token.key())
            .forEach(
                key ->
                    tokens.add(
                        new Token(token.kind(), token.text(), key, token.start(), token.end())));
      } else {
        tokens.add(token);
      }
    }
    return new Line(new Words(text, tokens), clock, equipment);
  }
}
