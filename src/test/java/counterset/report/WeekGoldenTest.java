package counterset.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import counterset.report.text.WeekSheet;
import counterset.solve.WeekPlanner;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Weeks of sessions written by hand, as text. */
class WeekGoldenTest {

  /** Legs on neighbouring days: too short a recovery, repeated exercises, too many sets. */
  private static WeekPlan week(boolean recoveryIsRule) {
    List<Plan> plans = List.of(Plans.legs(), Plans.legs(), Plans.upperRounds());
    DayOfWeek[] days = {DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.FRIDAY};
    List<WeekSession> sessions = new ArrayList<>();
    for (int i = 0; i < days.length; i++) {
      sessions.add(new WeekSession(days[i], plans.get(i).problem()));
    }
    WeekProblem problem =
        new WeekProblem(
            "Legs twice",
            sessions,
            List.of(),
            Map.of("calves", new SetRange(6, 10)),
            recoveryIsRule,
            Map.of(),
            1);
    return new WeekPlanner(Plans.CATALOGUE, "test")
        .score(
            problem,
            plans.stream().map(Plan::session).toList(),
            new SolverNote(1, "none", "test", 0, true));
  }

  @Test
  void looksAsAgreed() {
    Golden.check(
        "week",
        ".txt",
        Map.of(
            "wish", WeekSheet.of(week(false), Plans.CATALOGUE, false, List.of()),
            "rule", WeekSheet.of(week(true), Plans.CATALOGUE, false, List.of())));
  }

  @Test
  void fitsThePageAndColourIsOnlyAnExtra() {
    String plain = WeekSheet.block(List.of(week(false), week(true)), Plans.CATALOGUE, false);
    assertThat(plain.lines())
        .allMatch(line -> line.length() <= 100 && line.equals(line.stripTrailing()));
    assertThat(plain.codePoints()).allMatch(c -> c == '\n' || c >= ' ' && c < 127);
    String coloured = WeekSheet.block(List.of(week(false), week(true)), Plans.CATALOGUE, true);
    assertThat(coloured.replaceAll("\u001b\\[[0-9]m", "")).isEqualTo(plain);
  }
}
