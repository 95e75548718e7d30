package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Keep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads wishes about exercises that are given one by one, with the names that asks may use. */
public final class WishWords {

  private final Suggestions suggestions;
  private final KeepReader keeps;
  private final WishReader wishes;
  private final NegationReader negations;

  public WishWords(Catalogue catalogue) {
    Vocabulary vocabulary = Vocabulary.of(catalogue);
    this.suggestions = new Suggestions(catalogue, vocabulary);
    this.keeps = new KeepReader(vocabulary, catalogue);
    this.wishes = new WishReader(vocabulary, catalogue);
    this.negations = new NegationReader(vocabulary, new MuscleNames(catalogue), catalogue);
  }

  /**
   * Reads wishes; never throws.
   *
   * @param keep places and exercises, {@code 1A=goblet-squat}
   * @param with exercises
   * @param without exercises, families or patterns
   */
  public WishReading read(List<String> keep, List<String> with, List<String> without) {
    AskDraft draft = new AskDraft();
    List<String> faults = new ArrayList<>();
    keep.forEach(wish -> read("--keep", wish, "keep ", keeps, draft, faults));
    with.forEach(wish -> read("--with", wish, "include ", wishes, draft, faults));
    without.forEach(wish -> read("--without", wish, "without ", negations, draft, faults));
    List<Keep> places = draft.kept.stream().map(AskDraft.Kept::keep).toList();
    return new WishReading(draft.include.keySet(), draft.exclude.keySet(), places, faults);
  }

  private void read(
      String option,
      String wish,
      String verb,
      PhraseReader reader,
      AskDraft draft,
      List<String> faults) {
    AskDraft own = new AskDraft();
    Words words = new Words(verb + wish, new Tokenizer(verb + wish, own).tokens());
    Optional<Phrase> phrase = reader.read(words, 0);
    boolean whole = phrase.filter(read -> read.end() == words.size()).isPresent();
    phrase.flatMap(Phrase::effect).ifPresent(effect -> effect.accept(own));
    boolean understood =
        whole
            && own.faults().isEmpty()
            && !(own.kept.isEmpty() && own.include.isEmpty() && own.exclude.isEmpty());
    if (understood) {
      phrase.flatMap(Phrase::effect).ifPresent(effect -> effect.accept(draft));
      return;
    }
    String why =
        own.faults().isEmpty()
            ? suggestions.message(words, 1, words.size())
            : own.faults().get(0).message();
    faults.add(option + " (" + wish + "): " + why);
  }
}
