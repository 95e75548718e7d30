package counterset.quality;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.quality.Reference.Written;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReferencesTest {

  private static final List<Reference> ALL = References.all();

  @Test
  void all_are_read_whole() {
    assertThat(ALL).hasSize(32);
    assertThat(ALL)
        .allSatisfy(
            it -> {
              assertThat(it.supersets()).allSatisfy(superset -> assertThat(superset).hasSize(2));
              assertThat(it.never()).hasSizeGreaterThan(2);
              assertThat(it.why()).isNotBlank();
            });
  }

  @Test
  void a_place_has_a_name_a_side_and_equipment_with_its_load() {
    Reference first = ALL.get(0);
    assertThat(first.ask())
        .isEqualTo("20 min, lower body, dumbbells plus ankle weights, sore knees");
    assertThat(first.supersets().get(4))
        .containsExactly(
            new Written("Straight leg raise", "left", List.of("ankle-weights"), "light"),
            new Written("Straight leg raise", "right", List.of("ankle-weights"), "light"));
    assertThat(ALL.get(3).supersets().get(1).get(0).equipment())
        .containsExactly("dumbbell", "chair");
  }

  @Test
  void both_sides_of_an_exercise_stand_in_one_superset() {
    assertThat(ALL)
        .flatExtracting(Reference::supersets)
        .allSatisfy(
            pair ->
                assertThat(pair.get(0).isOneSided())
                    .isEqualTo(pair.get(1).isOneSided() && pair.get(1).side().equals("right")));
  }
}
