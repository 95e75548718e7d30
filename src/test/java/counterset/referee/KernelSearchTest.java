package counterset.referee;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Part;
import counterset.referee.Verdict.Status;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the referee says of large problems holds on a small one, whose optimum it can prove. */
class KernelSearchTest {

  private final SmallProblem small = SmallProblems.all().get(0);
  private final Referee referee = new Referee(small.catalogue());
  private final Verdict proven = referee.judge(small.problem(), new Limits(60, 1, true));

  @Test
  void itFindsASessionThatBreaksNoRuleAndSaysWhatItIsWorth() {
    Verdict found = search();

    Verdict exact = referee.score(small.problem(), found.places());
    assertThat(exact.status()).isEqualTo(Status.PROVEN);
    assertThat(List.of(found.medium(), found.soft())).containsExactly(exact.medium(), exact.soft());
    assertThat(proven.isBetterThan(found) || proven.soft() == found.soft()).isTrue();
  }

  @Test
  void theWholeModelBoundsIt() {
    Verdict found = search();

    Verdict bounded =
        referee.bound(
            small.problem(),
            small.catalogue().exercises(Part.MAIN),
            found,
            1,
            System.nanoTime() + 30_000_000_000L);

    assertThat(found.isBetterThan(bounded)).isFalse();
    assertThat(bounded.softBound()).isGreaterThanOrEqualTo(proven.soft());
  }

  private Verdict search() {
    return new KernelSearch(
            referee,
            small.problem(),
            small.catalogue().exercises(Part.MAIN),
            new Rules(small.problem(), small.catalogue()),
            1)
        .run(System.nanoTime() + 60_000_000_000L)
        .orElseThrow();
  }
}
