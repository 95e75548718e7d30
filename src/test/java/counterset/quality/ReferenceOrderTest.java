package counterset.quality;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.quality.Spoiled.Kind;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The shares asked for are what was measured, rounded down. Raise them when they rise. */
@DisplayName("A reference ranks above itself with one fault put in")
class ReferenceOrderTest {

  /** Of 100; the goal is 95, but some references break the rule of the 5 s changeover. */
  private static final int LEAST = 89;

  private static final int LEAST_WITHOUT_RULES = 95;

  /** A kind has few cases, some of them 18: one more or less must not decide. */
  private static final int LEAST_OF_A_KIND = 80;

  private static final int LEAST_REFERENCES = 30;

  private static final Catalogue CATALOGUE = Catalogues.embedded();
  private static final List<Mapped> REFERENCES = Mapped.all(CATALOGUE);

  private static OrderResult result;

  @BeforeAll
  static void measure() throws IOException {
    result = OrderResult.of(REFERENCES, CATALOGUE);
    Reports.write("order.txt", result.text());
    System.out.println(result.summary());
  }

  @Test
  void enough_references_are_judged() {
    assertThat(result.judged()).hasSizeGreaterThanOrEqualTo(LEAST_REFERENCES);
  }

  @Test
  void most_faults_are_told() {
    assertThat(result.share()).isGreaterThanOrEqualTo(LEAST);
  }

  @Test
  void the_wishes_alone_tell_nearly_all_faults() {
    assertThat(result.shareWithoutRules()).isGreaterThanOrEqualTo(LEAST_WITHOUT_RULES);
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void no_kind_of_fault_is_overlooked(Kind kind) {
    assertThat(result.share(kind)).isGreaterThanOrEqualTo(LEAST_OF_A_KIND);
  }

  @Test
  void a_constraint_that_is_switched_off_lets_its_fault_through() {
    List<Mapped> blind =
        REFERENCES.stream()
            .map(it -> it.weighing(Map.of("lastResort", 0, "offTarget", 0)))
            .toList();
    OrderResult without = OrderResult.of(blind, CATALOGUE);
    assertThat(without.share(Kind.LAST_RESORT)).isLessThan(result.share(Kind.LAST_RESORT) - 3);
    assertThat(without.share(Kind.UNASKED)).isLessThan(result.share(Kind.UNASKED) - 5);
  }
}
