package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Met;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Energy cost against the 2024 Adult Compendium of Physical Activities (Herrmann 2024; values from
 * a secondary source).
 */
class MetCodesTest {

  private static final Map<String, Double> COMPENDIUM_2024 =
      Map.ofEntries(
          Map.entry("02020", 7.5),
          Map.entry("02022", 3.8),
          Map.entry("02024", 2.8),
          Map.entry("02030", 3.5),
          Map.entry("02032", 6.0),
          Map.entry("02034", 3.5),
          Map.entry("02035", 5.0),
          Map.entry("02040", 7.5),
          Map.entry("02050", 6.0),
          Map.entry("02052", 5.0),
          Map.entry("02054", 3.5),
          Map.entry("02055", 5.8),
          Map.entry("02056", 3.0),
          Map.entry("02057", 6.5),
          Map.entry("02058", 9.8),
          Map.entry("02060", 5.5),
          Map.entry("02061", 5.0),
          Map.entry("02062", 7.8),
          Map.entry("02064", 3.8),
          Map.entry("02101", 2.3),
          Map.entry("02103", 1.8),
          Map.entry("02105", 2.8),
          Map.entry("02112", 2.8),
          Map.entry("02140", 2.5),
          Map.entry("02143", 4.0),
          Map.entry("02150", 2.3),
          Map.entry("02160", 4.0),
          Map.entry("02170", 2.0),
          Map.entry("02180", 3.5),
          Map.entry("02210", 7.0),
          Map.entry("02340", 2.8),
          Map.entry("02344", 4.0),
          Map.entry("02001", 5.5),
          Map.entry("02002", 7.3),
          Map.entry("12025", 4.8),
          Map.entry("17190", 3.8),
          Map.entry("17200", 4.8),
          Map.entry("17133", 4.5),
          Map.entry("17131", 6.8));

  @Test
  void everyExerciseHasTheValueOfItsCode() {
    for (Exercise exercise : Catalogues.embedded().exercises().values()) {
      Met met = exercise.met();
      assertThat(met.edition()).as("edition of %s", exercise.id()).isEqualTo(2024);
      assertThat(COMPENDIUM_2024).as("code of %s", exercise.id()).containsKey(met.code());
      assertThat(met.value())
          .as("value of %s", exercise.id())
          .isEqualTo(COMPENDIUM_2024.get(met.code()));
    }
  }

  @Test
  void swingsAndSitToStandHaveTheirOwnCodes() {
    Map<String, Exercise> exercises = Catalogues.embedded().exercises();
    assertThat(exercises.get("kettlebell-swing").met().code()).isEqualTo("02058");
    assertThat(exercises.get("sit-to-stand").met().code()).isIn("02340", "02344");
  }
}
