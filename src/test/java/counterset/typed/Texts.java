package counterset.typed;

import counterset.fixture.FixedCatalogue;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Session;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads texts for tests. */
final class Texts {

  static final Catalogue CATALOGUE = FixedCatalogue.CATALOGUE;
  static final TypedReader READER = new TypedReader(CATALOGUE);

  private Texts() {}

  static TypedReading read(String text) {
    return READER.read(text, Optional.empty());
  }

  static TypedReading read(String text, Problem asked) {
    return READER.read(text, Optional.of(asked));
  }

  /** The session of a text without faults: {@code goblet-squat push-up | clam clam}. */
  static String session(String text) {
    return session(read(text));
  }

  static String session(TypedReading reading) {
    return reading
        .session()
        .map(typed -> supersets(typed.session()))
        .orElseGet(() -> reading.faults().toString());
  }

  static String supersets(Session session) {
    return session.supersets().stream()
        .map(
            superset ->
                superset.exercises().stream().map(Exercise::id).collect(Collectors.joining(" ")))
        .collect(Collectors.joining(" | "));
  }

  /** The faults of a text, one line each: {@code 3:5 message}. */
  static List<String> faults(String text) {
    return read(text).faults().stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.message())
        .toList();
  }
}
