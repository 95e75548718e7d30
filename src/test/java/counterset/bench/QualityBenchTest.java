package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.bench.QualityBench.Line;
import counterset.referee.FullSizeReferee.Judged;
import counterset.referee.Verdict;
import counterset.referee.Verdict.Status;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class QualityBenchTest {

  private static final Verdict.Size SIZE = new Verdict.Size(10, 4, 100, 100);

  private static Line line(Status status, int refereeSoft, long bound, double seconds) {
    Verdict verdict = new Verdict(status, 0, 0, refereeSoft, bound, List.of(), SIZE);
    return new Line(
        "some",
        new Points(0, 60),
        1,
        new Points(0, 61),
        new Judged(verdict, seconds),
        OptionalInt.of(70));
  }

  @Test
  void standardEffortIsHeldAgainstWhatTheRefereeFound() {
    Row row =
        QualityBench.rows(List.of(line(Status.FOUND, 60, 90, 40), line(Status.UNKNOWN, 0, 0, 40)))
            .get(0);
    assertThat(row.measured()).isEqualTo("1 of 1 (none found on 1 more)");
    assertThat(row.met()).isTrue();

    assertThat(QualityBench.rows(List.of(line(Status.FOUND, 62, 90, 40))).get(0).met()).isFalse();
  }

  @Test
  void itsTimeIsHeldAgainstTheRefereesOwn() {
    Row fast = QualityBench.rows(List.of(line(Status.FOUND, 60, 90, 20))).get(1);
    assertThat(fast.measured()).isEqualTo("median 1/20, at most 1/20");
    assertThat(fast.met()).isTrue();
    assertThat(QualityBench.rows(List.of(line(Status.FOUND, 60, 90, 19))).get(1).met()).isFalse();
  }

  @Test
  void theLowerBoundCountsAndOneThatBoundsNothingDoesNot() {
    assertThat(line(Status.FOUND, 60, 65, 40).bound()).hasValue(65);
    assertThat(line(Status.FOUND, 60, 90, 40).bound()).hasValue(70);
    assertThat(line(Status.FOUND, 60, Verdict.UNBOUNDED, 40).bound()).hasValue(70);
    assertThat(line(Status.UNKNOWN, 0, 0, 40).bound()).hasValue(70);
  }
}
