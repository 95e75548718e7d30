package counterset.model;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Entries;
import counterset.fixture.RandomSessions;
import org.junit.jupiter.api.Test;

/** A builder that starts from a record and changes nothing gives the same record. */
class BuildersTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  @Test
  void exercisesAreCopiedWhole() {
    assertThat(CATALOGUE.exercises().values())
        .isNotEmpty()
        .allSatisfy(it -> assertThat(it.toBuilder().build()).isEqualTo(it));
  }

  @Test
  void limitationsAreCopiedWhole() {
    assertThat(CATALOGUE.limitations().values())
        .isNotEmpty()
        .allSatisfy(it -> assertThat(it.toBuilder().build()).isEqualTo(it));
  }

  @Test
  void problemsAreCopiedWhole() {
    for (long seed = 1; seed <= 20; seed++) {
      Problem problem = new RandomSessions(CATALOGUE, seed).problem().problem();
      assertThat(problem.toBuilder().build()).as("seed %d", seed).isEqualTo(problem);
    }
  }

  @Test
  void entriesAreCopiedWhole() {
    assertThat(Entries.full(1).toBuilder().build()).isEqualTo(Entries.full(1));
  }
}
