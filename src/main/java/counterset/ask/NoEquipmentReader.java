package counterset.ask;

import java.util.Optional;

/** Reads "no equipment", and "nothing but dumbbells", which is no more than the dumbbells. */
final class NoEquipmentReader implements PhraseReader {

  private final Vocabulary vocabulary;
  private final EquipmentReader equipment;

  NoEquipmentReader(Vocabulary vocabulary, EquipmentReader equipment) {
    this.vocabulary = vocabulary;
    this.equipment = equipment;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match match = vocabulary.match(words, at, Kind.NO_EQUIPMENT).orElse(null);
    if (match == null) {
      return Optional.empty();
    }
    int end = match.end();
    boolean otherThan = words.is(end, "other") && words.is(end + 1, "than");
    int then = otherThan ? end + 2 : words.skip(end, "but", "except", "besides");
    if (then > end && equipment.read(words, then).isPresent()) {
      return Phrase.filler(then);
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.noEquipment.set(true, span, draft));
  }
}
