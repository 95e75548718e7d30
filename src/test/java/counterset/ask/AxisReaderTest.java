package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.report.Plans;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AxisReaderTest {

  private static final AxisReader READER = new AxisReader(Plans.CATALOGUE);
  private static final String ASK =
      "20 min, lower body, two 8 kg dumbbells, sore knees, 45/10/30, level 1, more calves";
  private static final Problem BASE =
      new AskReader(Plans.CATALOGUE).read(ASK).problem().orElseThrow();

  private static Problem varied(Axis axis, String value) {
    AxisReading reading = READER.read(axis, value);
    assertThat(reading.faults()).as(value).isEmpty();
    return AxisValue.varied(BASE, List.of(reading.value().orElseThrow()), "New", false);
  }

  private static List<String> faults(Axis axis, String value) {
    AxisReading reading = READER.read(axis, value);
    assertThat(reading.value()).as(value).isEmpty();
    return reading.faults();
  }

  @Test
  void eachValueChangesItsAxis() {
    assertThat(varied(Axis.MINUTES, "15").minutes()).isEqualTo(15);
    assertThat(varied(Axis.MINUTES, "half an hour").minutes()).isEqualTo(30);
    assertThat(varied(Axis.EQUIPMENT, "ankle weights and a mat").equipment())
        .extracting(Owned::id)
        .containsExactly("ankle-weights", "mat");
    assertThat(varied(Axis.EQUIPMENT, "none").equipment()).isEmpty();
    assertThat(varied(Axis.LIMITATIONS, "no floor").limitations()).containsExactly("no-floor");
    assertThat(varied(Axis.LIMITATIONS, "None").limitations()).isEmpty();
    assertThat(varied(Axis.LEVEL, "3").level()).isEqualTo(3);
    assertThat(varied(Axis.LEVEL, "beginner").level()).isEqualTo(1);
    assertThat(varied(Axis.PAIRING, "compound sets").pairing()).isEqualTo(Pairing.COMPOUND);
    assertThat(varied(Axis.TARGETS, "hamstrings, more calves").targets())
        .containsExactly(new Target("hamstrings", 1, 1), new Target("calves", 2, 1));
    assertThat(varied(Axis.ROUNDS, "2").clock().rounds()).isEqualTo(2);
    assertThat(varied(Axis.SUPERSETS, "tri-sets").clock().perSuperset()).isEqualTo(3);
    assertThat(varied(Axis.SEED, "7").seed()).isEqualTo(7);
  }

  @Test
  void ofAClockOnlyWhatIsSaidChanges() {
    Intervals before = BASE.clock();
    assertThat(before.between()).isEqualTo(10);
    Intervals after = varied(Axis.CLOCK, "40/20").clock();
    assertThat(after.work()).isEqualTo(40);
    assertThat(after.rest()).isEqualTo(20);
    assertThat(after.between()).isEqualTo(10);
    assertThat(after.warmUp()).isEqualTo(before.warmUp());
    assertThat(varied(Axis.CLOCK, "40/5/20").clock().between()).isEqualTo(5);
  }

  @ParameterizedTest
  @EnumSource(Axis.class)
  void nothingElseChangesAndTheExamplesAreRight(Axis axis) {
    for (String value : axis.values(axis.example())) {
      Problem varied = varied(axis, value);
      List<Object> before = parts(BASE);
      List<Object> after = parts(varied);
      int own = List.of(Axis.values()).indexOf(axis);
      for (int i = 0; i < before.size(); i++) {
        boolean clock = axis == Axis.CLOCK || axis == Axis.ROUNDS || axis == Axis.SUPERSETS;
        if (i != own && !(clock && i == List.of(Axis.values()).indexOf(Axis.CLOCK))) {
          assertThat(after.get(i))
              .as("%s=%s, part %d", axis.id(), value, i)
              .isEqualTo(before.get(i));
        }
      }
      assertThat(varied.title()).isEqualTo("New");
    }
  }

  /** By the order of the axes, and what no axis changes. */
  private static List<Object> parts(Problem problem) {
    return List.of(
        problem.minutes(),
        problem.equipment(),
        problem.limitations(),
        problem.level(),
        problem.pairing(),
        problem.targets(),
        problem.clock(),
        0,
        0,
        problem.seed(),
        problem.tracks(),
        problem.include(),
        problem.exclude(),
        problem.keep(),
        problem.likes(),
        problem.dislikes(),
        problem.recent(),
        problem.date(),
        problem.weights());
  }

  @Test
  void anOpenWarmUpGoesByTheMinutes() {
    assertThat(READER.leavesWarmUpOpen(ASK)).isTrue();
    assertThat(READER.leavesWarmUpOpen(ASK + ", warm-up 3 min")).isFalse();
    AxisValue eight = READER.read(Axis.MINUTES, "8").value().orElseThrow();
    Problem asked = new AskReader(Plans.CATALOGUE).read("8 min, legs").problem().orElseThrow();
    assertThat(AxisValue.varied(BASE, List.of(eight), "", true).clock().warmUp())
        .isEqualTo(asked.clock().warmUp());
    assertThat(AxisValue.varied(BASE, List.of(eight), "", false).clock().warmUp())
        .isEqualTo(BASE.clock().warmUp());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MINUTES | fifteen | number",
        "MINUTES | 0 | at least 1 minute",
        "MINUTES | 500 | at most 180 minutes",
        "MINUTES | dumbbells | says nothing about minutes",
        "EQUIPMENT | dumbels | dumbbell",
        "EQUIPMENT | 3 rounds | says nothing about equipment",
        "EQUIPMENT | dumbbells, 30 min | says more than equipment",
        "EQUIPMENT | dumbbells, no chair | says more than equipment",
        "LIMITATIONS | sore kneez | sore knees",
        "LEVEL | 4 | A level is 1",
        "PAIRING | opposng | opposing",
        "TARGETS | more calves | says nothing about targets",
        "TARGETS | legs, include goblet squat, dumbbells | says more than targets",
        "CLOCK | warm-up 3 min | says nothing about clock",
        "CLOCK | 45 | number",
        "ROUNDS | 99 | from 1 to 10",
        "SEED | -1 | seed=",
        "SUPERSETS | quad-sets | supersets,tri-sets"
      })
  void faultsNameTheRemedy(Axis axis, String value, String words) {
    assertThat(faults(axis, value)).isNotEmpty().anySatisfy(it -> assertThat(it).contains(words));
  }

  @Test
  void anEmptyOrEndlessValueIsAFault() {
    assertThat(faults(Axis.MINUTES, " ")).singleElement().asString().contains("empty", "15,20,30");
    assertThat(faults(Axis.TARGETS, "x".repeat(2000))).singleElement().asString().contains("1000");
  }

  @Property(tries = 300)
  void anyWordsAreReadOrFaulty(@ForAll Axis axis, @ForAll String value) {
    AxisReading reading = READER.read(axis, value);
    assertThat(reading.value().isPresent()).isEqualTo(reading.faults().isEmpty());
  }
}
