package counterset.typed;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every name of the catalogue stands for its exercise, however it is written. */
class EveryNameTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();
  private static final TypedReader READER = new TypedReader(CATALOGUE);

  private static String read(String name) {
    return Texts.session(READER.read(name + ", left", Optional.empty()));
  }

  private static List<String> wrong(java.util.function.UnaryOperator<String> writing) {
    List<String> wrong = new ArrayList<>();
    for (Exercise exercise : CATALOGUE.exercises(Part.MAIN)) {
      String read = read(writing.apply(exercise.name()));
      if (!read.equals(exercise.id())) {
        wrong.add(exercise.name() + ": " + read);
      }
    }
    return wrong;
  }

  @Test
  void names() {
    assertThat(wrong(name -> name)).isEmpty();
  }

  @Test
  void inCapitalsAndWithoutHyphens() {
    assertThat(wrong(name -> name.toUpperCase(Locale.ROOT).replace('-', ' '))).isEmpty();
  }

  @Test
  void inThePlural() {
    assertThat(wrong(name -> name.endsWith("s") || name.endsWith("y") ? name : name + "s"))
        .isEmpty();
  }

  @Test
  void ids() {
    List<String> wrong =
        CATALOGUE.exercises(Part.MAIN).stream()
            .map(Exercise::id)
            .filter(id -> !read(id).equals(id))
            .toList();
    assertThat(wrong).isEmpty();
  }

  /** A name that several share stands for the plainest of them, or has to be asked for. */
  @Test
  void otherNames() {
    Map<String, List<Exercise>> byName =
        CATALOGUE.exercises(Part.MAIN).stream()
            .flatMap(it -> it.names().stream().map(name -> Map.entry(name, it)))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    byName.forEach(
        (name, exercises) -> {
          if (exercises.size() == 1) {
            assertThat(read(name)).as(name).isEqualTo(exercises.get(0).id());
          }
        });
  }

  @Test
  void movesOfTheWarmUpAndCoolDown() {
    for (Part part : List.of(Part.WARM_UP, Part.COOL_DOWN)) {
      for (Exercise move : CATALOGUE.exercises(part)) {
        TypedReading reading =
            READER.read("squat\n\n" + part.id() + ":\n" + move.name() + "\n", Optional.empty());
        assertThat(reading.faults()).as(move.name()).isEmpty();
        var session = reading.session().orElseThrow().session();
        assertThat(Stream.concat(session.warmUp().stream(), session.coolDown().stream()))
            .as(move.name())
            .containsExactly(move);
      }
    }
  }
}
