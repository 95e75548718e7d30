package counterset.quality;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.quality.Reference.Written;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceNamesTest {

  private static final ReferenceNames NAMES = new ReferenceNames(Catalogues.embedded());

  @ParameterizedTest
  @CsvSource({
    "Romanian deadlift, '', dumbbell, dumbbell-romanian-deadlift",
    "Romanian deadlift, '', kettlebell, kettlebell-romanian-deadlift",
    "Romanian deadlift, '', long-band, band-romanian-deadlift",
    "Glute bridge, '', '', glute-bridge",
    "Glute bridge, '', loop-band+mat, banded-glute-bridge",
    "Split squat, left, wall, supported-split-squat",
    "Bulgarian split squat, left, dumbbell+bench, dumbbell-bench-split-squat",
    "Side-lying hip adduction, right, ankle-weights, ankle-weight-inner-thigh-lift",
    "Alternating dumbbell shoulder press, '', dumbbell, alternating-overhead-press",
    "Superman pulldown, '', mat, prone-pull-down",
  })
  void a_name_is_found_with_its_equipment(String name, String side, String with, String id) {
    assertThat(NAMES.find(written(name, side, with)))
        .hasValueSatisfying(
            found -> {
              assertThat(found.exercise().id()).isEqualTo(id);
              assertThat(found.exact()).isTrue();
            });
  }

  @Test
  void what_needs_more_than_the_bracket_says_is_not_it() {
    assertThat(NAMES.find(written("Goblet squat", "", ""))).isEmpty();
  }

  @Test
  void sides_must_be_the_same() {
    Written oneSided = written("Curtsy lunge", "left", "");
    assertThat(NAMES.find(oneSided)).isEmpty();
    assertThat(NAMES.lack(oneSided)).startsWith("not with these sides: curtsy-lunge");
  }

  private static Written written(String name, String side, String with) {
    List<String> equipment = Stream.of(with.split("\\+")).filter(it -> !it.isEmpty()).toList();
    return new Written(name, side, equipment, equipment.isEmpty() ? "" : "medium");
  }
}
