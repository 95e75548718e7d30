package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Muscle;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Muscle groups oppose each other by joint action: Neumann, Kinesiology of the Musculoskeletal
 * System, 3rd ed. 2017; Kendall, Muscles: Testing and Function, 5th ed.; Gray's Anatomy, 42nd ed.
 * (textbook consensus, from memory).
 */
class OpposesTest {

  private static final Map<String, Muscle> MUSCLES = Catalogues.embedded().muscles();

  /** Joint action by joint action: the prime movers of one against those of the other. */
  private static final String[][] ACTIONS = {
    {"quadriceps", "hamstrings"}, // knee: extension, flexion
    {"hip-flexors", "gluteus-maximus"}, // hip: flexion, extension
    {"hip-flexors", "hamstrings"}, // hip: flexion, extension
    {"hip-abductors", "hip-adductors"}, // hip: abduction, adduction
    {"calves", "shins"}, // ankle: plantarflexion, dorsiflexion
    {"abdominals", "lower-back"}, // trunk: flexion, extension
    {"biceps", "triceps"}, // elbow: flexion, extension
    {"chest", "upper-back"}, // shoulder: horizontal push, horizontal pull
    {"shoulders", "lats"}, // shoulder: vertical push, vertical pull
  };

  static Collection<Muscle> muscles() {
    return MUSCLES.values();
  }

  @ParameterizedTest
  @MethodSource("muscles")
  void opposingIsSymmetricAndNothingOpposesItself(Muscle muscle) {
    assertThat(muscle.opposes()).doesNotContain(muscle.id());
    assertThat(muscle.opposes())
        .allMatch(other -> MUSCLES.get(other).opposes().contains(muscle.id()));
  }

  @Test
  void theTableOfJointActionsIsTheCatalogue() {
    Map<String, Set<String>> table = new TreeMap<>();
    MUSCLES.keySet().forEach(id -> table.put(id, new TreeSet<>()));
    for (String[] action : ACTIONS) {
      table.get(action[0]).add(action[1]);
      table.get(action[1]).add(action[0]);
    }
    Map<String, Set<String>> catalogue = new TreeMap<>();
    MUSCLES.forEach((id, muscle) -> catalogue.put(id, new TreeSet<>(muscle.opposes())));
    assertThat(catalogue).isEqualTo(table);
  }

  /**
   * Muscles that cross two joints work together in squats and hip thrusts: front and back alone
   * make no antagonists.
   */
  @ParameterizedTest
  @CsvSource({
    "quadriceps, gluteus-maximus",
    "quadriceps, hip-flexors",
    "calves, hamstrings",
    "gluteus-maximus, hamstrings"
  })
  void theseDoNotOpposeEachOther(String one, String other) {
    assertThat(MUSCLES.get(one).opposes()).doesNotContain(other);
  }
}
