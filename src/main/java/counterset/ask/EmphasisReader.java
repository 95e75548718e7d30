package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads emphasis: "more glutes", "focus on back and shoulders", "glute focus". */
final class EmphasisReader implements PhraseReader {

  private final Vocabulary vocabulary;
  private final MuscleNames muscles;

  EmphasisReader(Vocabulary vocabulary, MuscleNames muscles) {
    this.vocabulary = vocabulary;
    this.muscles = muscles;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match verb = vocabulary.match(words, at, Kind.EMPHASIS).orElse(null);
    if (verb == null) {
      return muscle(words, at)
          .filter(match -> words.is(match.end(), "focus", "emphasis"))
          .flatMap(match -> phrase(words, at, match.end() + 1, muscles.of(match)));
    }
    int first = words.skipSmall(words.skip(verb.end(), ":", "on", "for"));
    Match match = muscle(words, first).orElse(null);
    if (match == null) {
      return ExerciseLists.one(vocabulary, words, first)
          .flatMap(
              exercise ->
                  Phrase.fault(
                      words,
                      at,
                      exercise.end(),
                      "Emphasis is for muscle groups; for exercises say \"likes "
                          + words.span(first, exercise.end()).text()
                          + "\"."));
    }
    List<String> ids = new ArrayList<>();
    int end = first;
    while (match != null) {
      ids.addAll(muscles.of(match));
      end = match.end();
      match = words.listGoesOn(end).flatMap(next -> muscle(words, next)).orElse(null);
    }
    return phrase(words, at, end, ids);
  }

  private Optional<Match> muscle(Words words, int at) {
    return MuscleNames.one(vocabulary, words, at);
  }

  private static Optional<Phrase> phrase(Words words, int at, int end, List<String> ids) {
    Span span = words.span(at, end);
    return Phrase.of(
        end,
        draft -> {
          draft.emphasis.addAll(ids);
          draft.want(ids, span);
        });
  }
}
