package counterset.ask;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * A phrase that was understood.
 *
 * @param end the place after it
 * @param effect what it does to the draft; none for filler words
 */
record Phrase(int end, Optional<Consumer<AskDraft>> effect) {

  static Optional<Phrase> of(int end, Consumer<AskDraft> effect) {
    return Optional.of(new Phrase(end, Optional.of(effect)));
  }

  /** A phrase that says nothing. */
  static Optional<Phrase> filler(int end) {
    return Optional.of(new Phrase(end, Optional.empty()));
  }

  /** A phrase that is understood but cannot be accepted. */
  static Optional<Phrase> fault(Words words, int from, int end, String message) {
    Span span = words.span(from, end);
    return of(end, draft -> draft.fault(span, message));
  }
}
