package counterset.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.catalogue.Catalogues;
import counterset.catalogue.Figures;
import counterset.model.Exercise;
import counterset.model.Figure;
import counterset.model.Part;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Every figure of the catalogue, pose by pose and between the poses. */
class CatalogueFiguresTest {

  private static final Map<String, Figure> FIGURES = Figures.embedded();
  private static final Map<String, Exercise> EXERCISES = Catalogues.embedded().exercises();
  private static final Map<String, Moving> MOVING = new ConcurrentHashMap<>();

  /** A figure in motion: by far the most costly part of every test, computed once for all. */
  private record Moving(Motion motion, List<Motion.Held> held) {

    static Moving of(Figure figure) {
      return MOVING.computeIfAbsent(
          figure.id(),
          id -> {
            Motion motion = new Motion(figure);
            return new Moving(motion, motion.held(PoseFaults.STEPS));
          });
    }

    List<Stance> frames() {
      return held.stream().map(Motion.Held::stance).toList();
    }
  }

  static Stream<Named<Figure>> figures() {
    return FIGURES.values().stream().map(figure -> Named.of(figure.id(), figure));
  }

  @Test
  void everyMainExerciseHasOne() {
    Set<String> without =
        EXERCISES.values().stream()
            .filter(exercise -> exercise.part() == Part.MAIN)
            .filter(exercise -> exercise.figure().isEmpty())
            .map(Exercise::id)
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(without).isEmpty();
  }

  @Test
  void everyNameOfAFigureLeadsToOne() {
    assertThat(FIGURES.keySet())
        .containsAll(
            EXERCISES.values().stream().flatMap(exercise -> exercise.figure().stream()).toList());
  }

  @Test
  void everyFigureShowsAnExercise() {
    Set<String> shown =
        EXERCISES.values().stream()
            .flatMap(exercise -> exercise.figure().stream())
            .collect(Collectors.toSet());

    assertThat(FIGURES.keySet()).isSubsetOf(shown);
  }

  /** Contacts hold, nothing is below the floor, joints stay in range. */
  @ParameterizedTest
  @MethodSource("figures")
  void standsAsItSays(Figure figure) {
    Moving moving = Moving.of(figure);
    assertThat(PoseFaults.of(figure, moving.motion(), moving.frames())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("figures")
  void limbsKeepTheirLengths(Figure figure) {
    for (Stance stance : Moving.of(figure).frames()) {
      Body body = stance.body();
      length(body, Spot.RIGHT_HIP, Spot.RIGHT_KNEE, Proportions.THIGH);
      length(body, Spot.LEFT_KNEE, Spot.LEFT_ANKLE, Proportions.SHANK);
      length(body, Spot.RIGHT_SHOULDER, Spot.RIGHT_ELBOW, Proportions.UPPER_ARM);
      length(body, Spot.LEFT_ELBOW, Spot.LEFT_HAND, Proportions.FOREARM + Proportions.FIST);
      length(body, Spot.SEAT, Spot.WAIST, Proportions.PELVIS);
      length(body, Spot.RIGHT_HIP, Spot.LEFT_HIP, 2 * Proportions.HALF_HIPS);
    }
  }

  /** What stands in two poses in a row stays put on the way as well. */
  @ParameterizedTest
  @MethodSource("figures")
  void whatStandsStaysPut(Figure figure) {
    for (Motion.Held held : Moving.of(figure).held()) {
      for (Contact contact : held.contacts()) {
        for (double miss : contact.misses(held.stance().body())) {
          assertThat(miss).as(figure.id() + ", " + contact.spot()).isCloseTo(0, within(0.02));
        }
      }
    }
  }

  /** Something is seen to move, and the drawing is XML that says what it is. */
  @ParameterizedTest
  @MethodSource("figures")
  void isDrawn(Figure figure) throws Exception {
    Exercise exercise =
        EXERCISES.values().stream()
            .filter(candidate -> candidate.figure().filter(figure.id()::equals).isPresent())
            .findFirst()
            .orElseThrow();
    Drawing drawing = new Drawing(exercise, figure);

    assertThat(label(drawing.still("<\"words\"> & more"))).isEqualTo("<\"words\"> & more");
    String moving = drawing.moving("words");
    assertThat(label(moving)).isEqualTo("words");
    assertThat(moving).contains("<animate ");
    assertThat(drawing.still("words")).isEqualTo(new Drawing(exercise, figure).still("words"));
  }

  private static void length(Body body, Spot from, Spot to, double length) {
    assertThat(body.at(from).minus(body.at(to)).length()).isCloseTo(length, within(1e-9));
  }

  private static String label(String svg)
      throws ParserConfigurationException, IOException, SAXException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement()
        .getAttribute("aria-label");
  }
}
