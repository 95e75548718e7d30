package counterset.ask;

import counterset.model.Catalogue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the one-line asks of a coach with the names of one catalogue. Immutable and safe to share.
 */
public final class AskReader {

  private static final int MAX_LENGTH = 1000;

  private final Catalogue catalogue;
  private final Suggestions suggestions;
  private final List<PhraseReader> readers;

  public AskReader(Catalogue catalogue) {
    this(catalogue, Vocabulary.of(catalogue));
  }

  /** A reader whose vocabulary may know more words, for suggestions. */
  AskReader(Catalogue catalogue, Vocabulary vocabulary) {
    this.catalogue = catalogue;
    this.suggestions = new Suggestions(catalogue, vocabulary);
    TimeLengths lengths = new TimeLengths(vocabulary);
    MuscleNames muscles = new MuscleNames(catalogue);
    EquipmentReader equipment = new EquipmentReader(vocabulary, catalogue);
    LimitationReader limitations = new LimitationReader(vocabulary);
    NegationReader negations = new NegationReader(vocabulary, muscles, catalogue);
    this.readers =
        List.of(
            new TracksReader(limitations, negations),
            new DurationReader(lengths),
            new ClockReader(),
            new ClockPartReader(vocabulary, lengths),
            new ShapeReader(vocabulary),
            new LevelReader(vocabulary),
            new PairingReader(vocabulary),
            new SeedReader(),
            new NoEquipmentReader(vocabulary, equipment),
            equipment,
            limitations,
            new SetsReader(vocabulary, muscles),
            new EmphasisReader(vocabulary, muscles),
            new TargetReader(vocabulary, muscles),
            negations,
            new WishReader(vocabulary, catalogue),
            new KeepReader(vocabulary, catalogue),
            new ExerciseReader(vocabulary),
            new FillerReader(vocabulary));
  }

  /** Reads an ask; never throws, whatever it is. */
  public AskReading read(String ask) {
    AskDraft draft = new AskDraft();
    if (isTooLong(ask, draft)) {
      return new AskReading(Optional.empty(), List.of(), draft.faults(), Set.of());
    }
    Words words = new Words(ask, new Tokenizer(ask, draft).tokens());
    if (!readAll(words, draft) && draft.faults().isEmpty()) {
      draft.fault(
          new Span(Span.escape(ask.strip()), 1),
          "The ask is empty. Name what you want, such as \"20 min, lower body, dumbbells, sore"
              + " knees\".");
    }
    return finish(ask, draft);
  }

  /** Whether an ask is longer than any is read; that is a fault. */
  static boolean isTooLong(String ask, AskDraft draft) {
    if (ask.length() <= MAX_LENGTH) {
      return false;
    }
    String start = Span.escape(ask.substring(0, 40)) + "...";
    draft.fault(
        new Span(start, 1),
        "An ask has at most "
            + MAX_LENGTH
            + " characters; this one has "
            + ask.length()
            + ". Put a long one into a problem file.");
    return true;
  }

  /** Reads the words of one session out of several, of which there need not be any. */
  AskReading read(Words words, AskDraft draft, String title) {
    readAll(words, draft);
    return finish(title, draft);
  }

  /** The phrases that are understood, by the places where they begin. */
  Map<Integer, Phrase> phrases(Words words) {
    Map<Integer, Phrase> phrases = new LinkedHashMap<>();
    int at = 0;
    while (at < words.size()) {
      Optional<Phrase> phrase = words.isSeparator(at) ? Optional.empty() : longest(words, at);
      if (phrase.isPresent()) {
        phrases.put(at, phrase.get());
      }
      at = phrase.map(Phrase::end).orElse(at + 1);
    }
    return phrases;
  }

  /** Returns whether anything but filler words was there. */
  private boolean readAll(Words words, AskDraft draft) {
    boolean asked = false;
    int at = 0;
    while (at < words.size()) {
      if (words.isSeparator(at)) {
        at++;
        continue;
      }
      Optional<Phrase> phrase = longest(words, at);
      int end;
      if (phrase.isPresent()) {
        end = phrase.get().end();
        phrase.get().effect().ifPresent(effect -> effect.accept(draft));
        asked |= phrase.get().effect().isPresent();
      } else {
        end = at + 1;
        while (end < words.size() && !words.isSeparator(end) && longest(words, end).isEmpty()) {
          end++;
        }
        draft.fault(words.span(at, end), suggestions.message(words, at, end));
      }
      at = end;
    }
    return asked;
  }

  private Optional<Phrase> longest(Words words, int at) {
    Phrase best = null;
    for (PhraseReader reader : readers) {
      Phrase phrase = reader.read(words, at).orElse(null);
      if (phrase != null && (best == null || phrase.end() > best.end())) {
        best = phrase;
      }
    }
    return Optional.ofNullable(best);
  }

  private AskReading finish(String title, AskDraft draft) {
    new Contradictions(catalogue, draft).report();
    Assembly assembly = new Assembly(catalogue, draft);
    if (draft.faults().isEmpty()) {
      List<String> echo = new Echo(catalogue, draft, assembly).lines();
      return new AskReading(
          Optional.of(assembly.problem(title)), echo, List.of(), draft.silentAbout());
    }
    List<AskFault> faults = new ArrayList<>(draft.faults());
    faults.sort(Comparator.comparingInt(AskFault::column));
    return new AskReading(
        Optional.empty(), List.of(), faults.stream().distinct().toList(), Set.of());
  }
}
