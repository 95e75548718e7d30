package counterset.ask;

import java.util.List;
import java.util.Optional;

/** Reads the least number of sets: "3 sets of glutes", "glutes twice", "calves three times". */
final class SetsReader implements PhraseReader {

  private static final int MAX_SETS = 20;

  private final Vocabulary vocabulary;
  private final MuscleNames muscles;

  SetsReader(Vocabulary vocabulary, MuscleNames muscles) {
    this.vocabulary = vocabulary;
    this.muscles = muscles;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Optional<Phrase> countFirst = countFirst(words, at);
    return countFirst.isPresent() ? countFirst : muscleFirst(words, at);
  }

  private Optional<Phrase> countFirst(Words words, int at) {
    int start = words.is(at, "at") && words.is(at + 1, "least") ? at + 2 : at;
    Numeral count = Numeral.read(words, start).filter(it -> words.is(it.end(), "set")).orElse(null);
    if (count == null) {
      return Optional.empty();
    }
    int name = words.skipSmall(words.skip(count.end() + 1, "of", "for", "on"));
    Match muscle = muscle(words, name).orElse(null);
    if (muscle != null) {
      return phrase(words, at, muscle.end(), count, muscles.of(muscle));
    }
    Match exercise = ExerciseLists.one(vocabulary, words, name).orElse(null);
    return exercise == null
        ? Phrase.fault(
            words,
            at,
            count.end() + 1,
            "Say which muscle group gets these sets (\"3 sets of glutes\"), or say \"3 rounds\".")
        : Phrase.fault(
            words,
            at,
            exercise.end(),
            "Each exercise is done once a session. Ask for the sets of a muscle group (\"3 sets of glutes\"), "
                + "or for rounds (\"3 rounds\").");
  }

  private Optional<Phrase> muscleFirst(Words words, int at) {
    return muscle(words, at)
        .flatMap(
            match -> {
              int i = match.end();
              Numeral count =
                  words.is(i, "twice")
                      ? new Numeral(2, i + 1)
                      : Numeral.read(words, i)
                          .filter(it -> words.is(it.end(), "time", "x"))
                          .map(it -> new Numeral(it.value(), it.end() + 1))
                          .orElse(null);
              return count == null
                  ? Optional.empty()
                  : phrase(words, at, count.end(), count, muscles.of(match));
            });
  }

  private Optional<Match> muscle(Words words, int at) {
    return MuscleNames.one(vocabulary, words, at);
  }

  private static Optional<Phrase> phrase(
      Words words, int at, int end, Numeral count, List<String> ids) {
    if (!count.isWhole(1, MAX_SETS)) {
      return Phrase.fault(
          words,
          at,
          end,
          "The sets of a muscle group are a whole number from 1 to " + MAX_SETS + ".");
    }
    Span span = words.span(at, end);
    return Phrase.of(
        end,
        draft -> {
          ids.forEach(id -> draft.minSets(id).set(count.whole(), span, draft));
          draft.targets.addAll(ids);
          draft.want(ids, span);
        });
  }
}
