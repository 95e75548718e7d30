package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.fixture.Problems;
import counterset.fixture.SmallTrade;
import counterset.fixture.Trade;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which sessions lie inside; exercises are written by number, one-sided are 1, 5 and 9. */
class FenceTest {

  private static final SessionFacts FACTS = facts();

  private static SessionFacts facts() {
    Catalogue catalogue = Trade.of(SmallTrade.exercises(12));
    Problem problem = Problems.of(catalogue, Region.LOWER).problem();
    return new SessionFacts(problem, catalogue, SmallTrade.exercises(12), 2);
  }

  /** {@code 0 1 1 -}: a dash for nothing. */
  private static Candidate[] session(String written) {
    return Arrays.stream(written.split(" "))
        .map(word -> word.equals("-") ? null : FACTS.candidates().get(Integer.parseInt(word)))
        .toArray(Candidate[]::new);
  }

  @ParameterizedTest
  @CsvSource({
    "0 2 3 4, 0 2 3 4, 0",
    "0 2 3 4, 0 7 3 4, 1",
    "0 2 3 4, 2 0 3 4, 2",
    "0 2 3 4, 3 4 0 2, 4",
    "0 2 3 4, 1 1 3 4, 1",
    "1 1 3 4, 5 5 3 4, 1",
    "1 1 3 4, 0 2 3 4, 2",
    "1 1 3 4, 1 2 3 4, 1",
    "1 2 3 4, 1 1 3 4, 1",
    "2 1 3 4, 1 1 3 4, 1",
    "1 1 5 5, 5 5 1 1, 2",
    "0 2 3 4, 0 2 3 -, 1",
    "0 2 3 4, 0 2 - -, 2",
    "1 1 3 4, - - 3 4, 1",
    "- - 3 4, 1 1 3 4, 1",
    "- - 3 4, 0 - 3 4, 1"
  })
  void changesAreCountedByPlaceAndBothSidesOnce(String from, String to, int changes) {
    assertThat(FewChanges.count(session(from), session(to), 2)).isEqualTo(changes);
    assertThat(new FewChanges(session(from), 2, changes).admits(session(to))).isTrue();
    assertThat(changes == 0 || !new FewChanges(session(from), 2, changes - 1).admits(session(to)))
        .isTrue();
  }

  @Test
  void changesCannotBeFewerThanNone() {
    assertThatThrownBy(() -> new FewChanges(session("0 2"), 2, -1)).hasMessageContaining("(-1)");
  }

  /** 6 is a variant of 5: {@code e6} of {@code e5}. */
  @ParameterizedTest
  @CsvSource({
    "0 2 3 4, 0 2 7 8, true",
    "0 2 3 4, 0 2 3 8, false",
    "0 2 3 4, 7 8 10 11, true",
    "0 2 3 4, 0 2 1 1, false",
    "0 2 3 4, 0 7 1 1, true",
    "5 5 3 4, 6 0 3 2, false",
    "5 5 3 4, 6 0 7 2, true",
    "0 2 3 4, 0 2 - -, true",
    "0 2 3 4, 0 2 3 -, false"
  })
  void atMostHalfOfEitherIsShared(String other, String session, boolean inside) {
    List<String> roots =
        Arrays.stream(session(other)).map(candidate -> candidate.exercise().root()).toList();
    assertThat(new Apart(FACTS, List.of(roots)).admits(session(session))).isEqualTo(inside);
    assertThat(new Apart(FACTS, List.of(Set.of("e11"), roots)).admits(session(session)))
        .isEqualTo(inside && !session.contains("11"));
  }
}
