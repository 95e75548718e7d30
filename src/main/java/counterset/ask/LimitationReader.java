package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads limitations, also where one word serves two ("sore knees and wrists", "knee and shoulder
 * pain"), and "easy on the knees". What might be a sore joint or a target is a fault, since a wrong
 * guess would load the joint.
 */
final class LimitationReader implements PhraseReader {

  private static final Set<String> SORE = Set.of("sore", "bad", "painful", "stiff", "weak");

  private final Vocabulary vocabulary;

  LimitationReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    if (words.is(at, "easy", "gentle", "careful") && words.is(at + 1, "on", "with")) {
      return spared(words, at);
    }
    Optional<Phrase> shared = sharedPain(words, at);
    return shared.isPresent() ? shared : named(words, at);
  }

  private Optional<Phrase> named(Words words, int at) {
    Match match = vocabulary.match(words, at, Kind.LIMITATION).orElse(null);
    if (match == null) {
      return Optional.empty();
    }
    List<String> ids = new ArrayList<>(match.ids(Kind.LIMITATION));
    int end = match.end();
    while (SORE.contains(words.at(at).key())) {
      Optional<Integer> joined =
          words.is(end, "plus") ? Optional.of(end + 1) : words.listGoesOn(end);
      int place = words.skipSmall(joined.orElse(words.skip(end, ",", "-", "with")));
      Match part = vocabulary.match(words, place, Kind.values()).orElse(null);
      if (place >= words.size() || part != null && part.has(Kind.LIMITATION)) {
        break;
      }
      boolean muscle = part != null && part.has(Kind.MUSCLE);
      int next = part == null ? place + 1 : part.end();
      List<String> more = sore(words, place, next);
      if (muscle && joined.isPresent() == more.isEmpty()) {
        return doubtful(words.span(at, end), words.span(place, next), next, ids, !more.isEmpty());
      }
      if (more.isEmpty() || place == end) {
        break;
      }
      ids.addAll(more);
      end = next;
    }
    return phrase(words, at, end, ids);
  }

  /** The limitation that a body part has when it is sore. */
  private List<String> sore(Words words, int from, int to) {
    for (String adjective : List.of("sore", "bad")) {
      List<String> keys = new ArrayList<>(List.of(adjective));
      keys.addAll(words.keys(from, to));
      List<String> ids = vocabulary.find(Kind.LIMITATION, keys);
      if (!ids.isEmpty()) {
        return ids;
      }
    }
    return List.of();
  }

  private static Optional<Phrase> doubtful(
      Span whole, Span part, int end, List<String> ids, boolean known) {
    String sore = "\"sore " + part.text().toLowerCase(Locale.ROOT) + "\"";
    String message =
        known
            ? "This may be sore or a target. Say "
                + sore
                + ", or name the target before "
                + whole.quoted()
                + "."
            : "There is no limitation "
                + sore
                + ". If it is a target, name it before "
                + whole.quoted()
                + ".";
    return Phrase.of(
        end,
        draft -> {
          ids.forEach(id -> draft.limitations.putIfAbsent(id, whole));
          draft.fault(part, message);
        });
  }

  private Optional<Phrase> sharedPain(Words words, int at) {
    for (int end = at + 1; end <= at + 2; end++) {
      List<String> keys = new ArrayList<>(words.keys(at, end));
      keys.add("pain");
      List<String> ids = vocabulary.find(Kind.LIMITATION, keys);
      Match other =
          words
              .listGoesOn(end)
              .flatMap(next -> vocabulary.match(words, next, Kind.LIMITATION))
              .orElse(null);
      if (!ids.isEmpty() && other != null && words.is(other.end() - 1, "pain")) {
        List<String> both = new ArrayList<>(ids);
        both.addAll(other.ids(Kind.LIMITATION));
        return phrase(words, at, other.end(), both);
      }
    }
    return Optional.empty();
  }

  private Optional<Phrase> spared(Words words, int at) {
    int part = words.skipSmall(at + 2);
    Match match = vocabulary.match(words, part, Kind.values()).orElse(null);
    int end = match == null ? part + 1 : match.end();
    boolean known = match != null && match.has(Kind.LIMITATION);
    List<String> ids = known ? match.ids(Kind.LIMITATION) : sore(words, part, end);
    return ids.isEmpty()
        ? Phrase.fault(
            words,
            at,
            Math.min(end, words.size()),
            "Name the limitation instead, such as \"sore knees\".")
        : phrase(words, at, end, ids);
  }

  private static Optional<Phrase> phrase(Words words, int at, int end, List<String> ids) {
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> ids.forEach(id -> draft.limitations.putIfAbsent(id, span)));
  }
}
