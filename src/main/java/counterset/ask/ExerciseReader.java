package counterset.ask;

import java.util.Locale;
import java.util.Optional;

/** Refuses an exercise, family or pattern of which nothing is said. */
final class ExerciseReader implements PhraseReader {

  private final ExerciseLists lists;

  ExerciseReader(Vocabulary vocabulary) {
    this.lists = new ExerciseLists(vocabulary);
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    return lists
        .one(words, at)
        .flatMap(
            match -> {
              String name = words.span(at, match.end()).text().toLowerCase(Locale.ROOT);
              String include = match.has(Kind.EXERCISE) ? "\"include " + name + "\", " : "";
              return Phrase.fault(
                  words,
                  at,
                  match.end(),
                  "Say "
                      + include
                      + "\"likes "
                      + name
                      + "\" or \"no "
                      + name
                      + "\"; a session is asked for by muscle groups and regions.");
            });
  }
}
