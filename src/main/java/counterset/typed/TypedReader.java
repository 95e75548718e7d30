package counterset.typed;

import counterset.ask.AskReader;
import counterset.ask.Phrases;
import counterset.model.Catalogue;
import counterset.model.Problem;
import java.util.Optional;

/** Reads sessions as coaches type them, with the names of one catalogue. Safe to share. */
public final class TypedReader {

  private final Catalogue catalogue;
  private final Phrases phrases;
  private final AskReader asks;
  private final EquipmentWords equipment;
  private final NameMatcher matcher;

  /** A reader for one catalogue. */
  public TypedReader(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.phrases = new Phrases(catalogue);
    this.asks = new AskReader(catalogue);
    this.equipment = new EquipmentWords(catalogue);
    this.matcher = new NameMatcher(catalogue, new Shorthand(phrases.keys()), equipment);
  }

  /**
   * Reads a text; never throws, whatever it is.
   *
   * @param asked what the session is judged by; without it the first line may say so, and what is
   *     still open is taken from the lines themselves
   */
  public TypedReading read(String text, Optional<Problem> asked) {
    Shorthand shorthand = new Shorthand(phrases.keys());
    Report report = new Report();
    Asked ask = new Asked(asks, asked, report);
    LineReader lines =
        new LineReader(
            catalogue,
            new SegmentReader(phrases, shorthand, equipment),
            new ItemReader(matcher),
            ask,
            report);
    Clean.lines(text, report).forEach(lines::read);
    return new Finish(catalogue, matcher, lines, ask, report).reading();
  }
}
