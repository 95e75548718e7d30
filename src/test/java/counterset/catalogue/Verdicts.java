package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;

/** What the limitations of the program's own catalogue say of its exercises. */
final class Verdicts {

  static final Catalogue CATALOGUE = Catalogues.embedded();

  private Verdicts() {}

  static Exercise exercise(String id) {
    assertThat(CATALOGUE.exercises()).containsKey(id);
    return CATALOGUE.exercises().get(id);
  }

  static void are(String limitation, boolean allowed, String... exercises) {
    assertThat(exercises)
        .allSatisfy(
            id ->
                assertThat(CATALOGUE.limitations().get(limitation).allows(exercise(id)))
                    .as("%s for %s", id, limitation)
                    .isEqualTo(allowed));
  }
}
