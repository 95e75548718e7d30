package counterset.ask;

import counterset.model.Catalogue;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what is not wanted: "no lunges", "without calves or shins", "no warm-up", "no dumbbells".
 */
final class NegationReader implements PhraseReader {

  private final Vocabulary vocabulary;
  private final MuscleNames muscles;
  private final ExerciseLists lists;
  private final Catalogue catalogue;

  NegationReader(Vocabulary vocabulary, MuscleNames muscles, Catalogue catalogue) {
    this.vocabulary = vocabulary;
    this.muscles = muscles;
    this.lists = new ExerciseLists(vocabulary);
    this.catalogue = catalogue;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match not = vocabulary.match(words, at, Kind.NOT).orElse(null);
    if (not == null) {
      return Optional.empty();
    }
    int first = words.skipSmall(words.is(not.end(), "more") ? not.end() + 1 : not.end());
    if (words.is(first, "target")) {
      return Phrase.fault(
          words, at, first + 1, "A session needs at least one target, such as \"lower body\".");
    }
    Match match = vocabulary.match(words, first, Kind.values()).orElse(null);
    if (match == null) {
      return Optional.empty();
    }
    if (match.has(Kind.MUSCLE) || match.has(Kind.REGION)) {
      return muscles(words, at, first);
    }
    if (match.has(Kind.EQUIPMENT)) {
      return equipment(words, at, first);
    }
    if (ExerciseLists.isOne(match)) {
      ExerciseLists.Listed listed = lists.read(words, first);
      Span span = words.span(at, listed.end());
      return Phrase.of(
          listed.end(), draft -> listed.ids().forEach(id -> draft.exclude.putIfAbsent(id, span)));
    }
    if (match.has(Kind.CLOCK_PART)) {
      Span span = words.span(at, match.end());
      return Phrase.of(match.end(), draft -> draft.clock(ClockPart.valueOf(match.id()), 0, span));
    }
    return other(words, at, match);
  }

  private static Optional<Phrase> other(Words words, int at, Match match) {
    if (match.has(Kind.LIMITATION)) {
      return Phrase.fault(
          words,
          at,
          match.end(),
          "Leave out a limitation that is not there; if it is there, name it without a \"no\".");
    }
    if (match.has(Kind.LEVEL) || match.has(Kind.PAIRING) || match.has(Kind.SHAPE)) {
      return Phrase.fault(
          words, at, match.end(), "Say which one you want, not which one you do not want.");
    }
    return Optional.empty();
  }

  private Optional<Phrase> muscles(Words words, int at, int first) {
    Set<String> ids = new LinkedHashSet<>();
    int end = first;
    Match match = muscle(words, first);
    while (match != null) {
      ids.addAll(muscles.of(match));
      end = match.end();
      match = words.listGoesOn(end).map(next -> muscle(words, next)).orElse(null);
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> ids.forEach(id -> draft.removed.putIfAbsent(id, span)));
  }

  private Match muscle(Words words, int at) {
    return MuscleNames.one(vocabulary, words, at).orElse(null);
  }

  private Optional<Phrase> equipment(Words words, int at, int first) {
    Set<String> ids = new LinkedHashSet<>();
    int end = first;
    Match match = equipment(words, first);
    while (match != null) {
      ids.addAll(match.ids(Kind.EQUIPMENT));
      end = match.end();
      match = words.listGoesOn(end).map(next -> equipment(words, next)).orElse(null);
    }
    List<String> fixed =
        ids.stream().filter(id -> catalogue.equipment().get(id).alwaysThere()).toList();
    if (!fixed.isEmpty()) {
      return Phrase.fault(
          words,
          at,
          end,
          "The "
              + fixed.get(0)
              + " is always taken to be there. Exclude the exercises that use it by their names.");
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> ids.forEach(id -> draft.withoutEquipment.putIfAbsent(id, span)));
  }

  private Match equipment(Words words, int at) {
    return vocabulary
        .match(words, at, Kind.values())
        .filter(match -> match.has(Kind.EQUIPMENT))
        .orElse(null);
  }
}
