package counterset.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AtTest {

  @ParameterizedTest
  @CsvSource({"1A, 1, 0", "3b, 3, 1", "12C, 12, 2", "999a, 999, 0", "' 2B ', 2, 1"})
  void readsWhatACoachWrites(String text, int superset, int position) {
    assertThat(At.parse(text)).contains(new At(superset, position));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "A", "3", "0A", "03A", "3D", "3AB", "A3", "1000A", "-1A", "3 A", "3A.", "\u0661A"
      })
  void anythingElseIsNoPlace(String text) {
    assertThat(At.parse(text)).isEmpty();
  }

  @Property
  void whatIsWrittenIsReadBack(
      @ForAll @IntRange(min = 1, max = 999) int superset, @ForAll @IntRange(max = 2) int position) {
    At at = new At(superset, position);
    assertThat(At.parse(at.toString())).isEqualTo(Optional.of(at));
    assertThat(at.toString()).isEqualTo(superset + at.letter());
  }

  @Test
  void placesAreInTheOrderOfTheSession() {
    List<At> places = List.of(new At(10, 0), new At(2, 1), new At(2, 0), new At(1, 2));
    assertThat(places.stream().sorted())
        .extracting(At::toString)
        .containsExactly("1C", "2A", "2B", "10A");
  }
}
