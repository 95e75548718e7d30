package counterset.ask;

import java.util.Optional;

/** Reads phrases that express one idea. */
@FunctionalInterface
interface PhraseReader {

  /** The phrase that begins at a place, if it is one of its kind. */
  Optional<Phrase> read(Words words, int at);
}
