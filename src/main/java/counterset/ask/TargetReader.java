package counterset.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads targets: a muscle group, a region, or a name that several muscle groups share. */
final class TargetReader implements PhraseReader {

  private final Vocabulary vocabulary;
  private final MuscleNames muscles;

  TargetReader(Vocabulary vocabulary, MuscleNames muscles) {
    this.vocabulary = vocabulary;
    this.muscles = muscles;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Numeral numeral = Numeral.read(words, at).orElse(null);
    if (numeral != null && words.is(numeral.end(), "target", "muscle")) {
      return Phrase.fault(
          words,
          at,
          numeral.end() + 1,
          "Name the targets instead of counting them, such as \"quadriceps, hamstrings\" or \"lower body\".");
    }
    return vocabulary
        .match(words, at, Kind.MUSCLE, Kind.REGION)
        .flatMap(
            match -> {
              List<String> ids = muscles.of(match);
              Span span = words.span(at, match.end());
              return Phrase.of(
                  match.end(),
                  draft -> {
                    draft.targets.addAll(ids);
                    draft.want(ids, span);
                    if (match.has(Kind.REGION) || ids.size() > 1) {
                      draft.labels.add(span.text().toLowerCase(Locale.ROOT));
                    }
                  });
            });
  }
}
