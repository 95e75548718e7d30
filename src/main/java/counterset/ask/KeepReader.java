package counterset.ask;

import counterset.model.At;
import counterset.model.Catalogue;
import java.util.Optional;

/** Reads what stays where it is: "keep 3A goblet squat", "keep goblet squat at 3A". */
final class KeepReader implements PhraseReader {

  private final ExerciseLists lists;
  private final ExerciseNames names;

  KeepReader(Vocabulary vocabulary, Catalogue catalogue) {
    this.lists = new ExerciseLists(vocabulary);
    this.names = new ExerciseNames(catalogue);
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    if (!words.is(at, "keep", "keeping")) {
      return Optional.empty();
    }
    int i = words.skip(at + 1, ":");
    Optional<At> before = place(words, i);
    int name = words.skipSmall(before.isPresent() ? words.skip(i + 2, ":", "=") : i);
    Match match = lists.one(words, name).orElse(null);
    if (match == null) {
      return before.isEmpty()
          ? Optional.empty()
          : Phrase.fault(words, at, i + 2, example(before.get()));
    }
    int behind = words.skip(match.end(), "at", "in", "as");
    Optional<At> where = before.isPresent() ? before : place(words, behind);
    int end = before.isPresent() || where.isEmpty() ? match.end() : behind + 2;
    if (where.isEmpty()) {
      return Phrase.fault(
          words,
          at,
          end,
          "Say where to keep it: the superset and its position, such as \"keep 3A "
              + words.span(name, match.end()).text()
              + "\".");
    }
    return names
        .one(match)
        .map(
            id -> {
              Span span = words.span(at, end);
              return Phrase.of(end, draft -> draft.keep(where.get(), id, span));
            })
        .orElseGet(() -> Phrase.fault(words, at, end, names.problem(match)));
  }

  private static String example(At at) {
    return "Name the exercise to keep at " + at + " by a name of the catalogue.";
  }

  private static Optional<At> place(Words words, int at) {
    Token number = words.at(at);
    Token letter = words.at(at + 1);
    return number.isNumber() && letter.isWord() && number.end() == letter.start()
        ? At.parse(number.text() + letter.text())
        : Optional.empty();
  }
}
