package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.bench.TargetBench.Line;
import counterset.search.TimedSearch.Found;
import java.util.List;
import org.junit.jupiter.api.Test;

class TargetBenchTest {

  private static final List<Found> EARLY =
      List.of(at(100, 0, 0, 10), at(200, 0, 0, 58), at(900, 0, 0, 60));
  private static final List<Found> LATE = List.of(at(100, -1, 0, 90), at(800, 0, 0, 57));
  private static final List<Found> NEVER = List.of(at(100, 0, -1, 90));

  private static Found at(long millis, int hard, int medium, int soft) {
    return new Found(millis * 1_000_000, hard, medium, soft);
  }

  @Test
  void theGoalIsReachedByTheFirstSessionThatBreaksNoRuleAndHasThePoints() {
    Points goal = new Points(0, 57);
    assertThat(TargetBench.seconds(EARLY, goal)).isEqualTo(0.2);
    assertThat(TargetBench.seconds(LATE, goal)).isEqualTo(0.8);
    assertThat(TargetBench.seconds(NEVER, goal)).isInfinite();
    assertThat(TargetBench.median(List.of(NEVER, EARLY, LATE), goal)).isEqualTo(0.8);
  }

  @Test
  void theSlowestProblemDecides() {
    Line fast = new Line("fast", new Points(0, 60), -240, List.of(EARLY), List.of(EARLY));
    Line slow = new Line("slow", new Points(0, 57), -240, List.of(LATE), List.of(EARLY));

    assertThat(TargetBench.rows(List.of(fast)).get(0).met()).isTrue();
    Row both = TargetBench.rows(List.of(fast, slow)).get(0);
    assertThat(both.met()).isFalse();
    assertThat(both.measured()).contains("slowest 0.80 s").contains("in time on 1 of 2");
  }

  @Test
  void aGoalThatIsNeverReachedIsMissed() {
    Line line = new Line("never", new Points(0, 60), -240, List.of(NEVER), List.of(EARLY));

    Row row = TargetBench.rows(List.of(line)).get(0);

    assertThat(row.met()).isFalse();
    assertThat(row.measured()).contains("slowest never");
  }
}
