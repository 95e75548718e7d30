package counterset.search;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Weeks, planned with the real catalogue; short sessions, so that the tests are. */
class WeekPlannerTest {

  private static final int MINUTES = 10;
  private static final int WEEKS = 5;
  private static final Limit QUICK = Limit.of(Effort.QUICK);
  private static final LocalDate MONDAY_THIS_WEEK = LocalDate.of(2026, 3, 9);
  private static final SolverNote SCORED = new SolverNote(1, "none", "test", 0, true);
  private static final Comparator<PlanScore> BETTER =
      Comparator.comparing(PlanScore::hard)
          .thenComparing(PlanScore::medium)
          .thenComparing(PlanScore::soft);

  private final Catalogue catalogue = Catalogues.embedded();

  private WeekPlanner planner() {
    return new WeekPlanner(catalogue, "test");
  }

  private WeekSession session(DayOfWeek day, Region... regions) {
    return session(day, MINUTES, regions);
  }

  private WeekSession session(DayOfWeek day, int minutes, Region... regions) {
    return new WeekSession(
        day,
        Problems.of(catalogue, regions)
            .minutes(minutes)
            .owning(Problems.two("dumbbell"))
            .problem());
  }

  private static WeekProblem week(long seed, boolean recoveryIsRule, WeekSession... sessions) {
    return new WeekProblem(
        "Test", List.of(sessions), List.of(), Map.of(), recoveryIsRule, Map.of(), seed);
  }

  /** Weeks of two or three sessions, of one region or all, often close together. */
  private WeekProblem someWeek(int number) {
    Region[] all = Region.values();
    int minutes = 8 + number % 5;
    Region[] one = {all[number % 2]};
    List<WeekSession> sessions = new ArrayList<>();
    sessions.add(session(MONDAY, minutes, number % 3 == 0 ? all : one));
    sessions.add(session(number % 2 == 0 ? TUESDAY : THURSDAY, minutes, one));
    if (number % 5 < 2) {
      sessions.add(session(SATURDAY, minutes, all));
    }
    return week(number, number % 4 == 0, sessions.toArray(WeekSession[]::new));
  }

  /** As a coach has it who plans day after day and says what was done on the days before. */
  private WeekPlan oneAfterAnother(WeekProblem week) {
    SessionPlanner planner = new SessionPlanner(catalogue, "test");
    List<Done> done = new ArrayList<>();
    List<Session> sessions = new ArrayList<>();
    for (WeekSession asked : week.sessions()) {
      LocalDate today = MONDAY_THIS_WEEK.plusDays(asked.day().ordinal());
      Problem problem = asked.problem().after(List.copyOf(done), Optional.of(today));
      Session session = planner.plan(problem, QUICK).session();
      done.add(new Done(today, session.work().map(Exercise::id).toList()));
      sessions.add(session);
    }
    return planner().score(week, sessions, SCORED);
  }

  @Test
  void aWeekIsNeverWorseThanItsSessionsOneAfterAnother() {
    int better = 0;
    for (int number = 1; number <= WEEKS; number++) {
      WeekProblem week = someWeek(number);
      PlanScore together = planner().plan(week, QUICK).score();
      PlanScore alone = oneAfterAnother(week).score();
      assertThat(BETTER.compare(together, alone))
          .as("week %d: %s together, %s one after another", number, together, alone)
          .isNotNegative();
      better += BETTER.compare(together, alone) > 0 ? 1 : 0;
    }
    assertThat(better).as("weeks that are better together").isGreaterThan(WEEKS / 2);
  }

  @Test
  void theScoreIsTheSumOfThePlansAndTheMatches() {
    WeekProblem problem =
        new WeekProblem(
            "Test",
            List.of(session(MONDAY, Region.LOWER), session(TUESDAY, Region.LOWER)),
            List.of(),
            Map.of("quadriceps", new SetRange(9, 9)),
            false,
            Map.of("weeklyVolume", 7),
            1);
    WeekPlan plan = planner().plan(problem, QUICK);
    int soft = plan.plans().stream().mapToInt(day -> day.score().soft()).sum();
    int matches = plan.matches().stream().mapToInt(WeekMatch::points).sum();
    assertThat(plan.score().hard()).isZero();
    assertThat(plan.score().soft()).isEqualTo(soft + matches);
    assertThat(plan.score().lines()).extracting(PlanScore.Line::score).isNotEmpty();
    assertThat(plan.score().lines().stream().mapToInt(PlanScore.Line::score).sum())
        .isEqualTo(matches);
    assertThat(plan.matches())
        .filteredOn(match -> match.constraint().equals("weeklyVolume"))
        .isNotEmpty()
        .allMatch(match -> match.points() == -7 * match.amount());
    assertThat(planner().score(problem, sessions(plan), plan.solver())).isEqualTo(plan);
  }

  private static List<Session> sessions(WeekPlan plan) {
    return plan.plans().stream().map(Plan::session).toList();
  }

  @Test
  void recoveryAsARuleIsKept() {
    WeekPlan plan =
        planner()
            .plan(
                week(3, true, session(MONDAY, Region.LOWER), session(TUESDAY, Region.values())),
                QUICK);
    assertThat(plan.score().hard()).isZero();
    assertThat(plan.score().lines())
        .filteredOn(line -> line.id().equals("recoveryShort"))
        .singleElement()
        .satisfies(line -> assertThat(line.level()).isEqualTo("hard"));
  }

  @Test
  void changingOneDayKeepsTheOthers() {
    WeekProblem problem =
        week(
            1,
            false,
            session(MONDAY, Region.LOWER),
            session(THURSDAY, Region.UPPER),
            session(SATURDAY, Region.values()));
    WeekPlan before = planner().plan(problem, QUICK);
    WeekProblem changed =
        week(
            1,
            false,
            session(MONDAY, Region.LOWER),
            session(THURSDAY, Region.values()),
            session(SATURDAY, Region.values()));
    WeekPlan after = planner().plan(KeptDays.keeping(changed, before, Set.of(THURSDAY)), QUICK);
    assertThat(after.plans().get(0).session()).isEqualTo(before.plans().get(0).session());
    assertThat(after.plans().get(2).session()).isEqualTo(before.plans().get(2).session());
    assertThat(after.plans().get(1).session().supersets())
        .isNotEqualTo(before.plans().get(1).session().supersets());
    assertThat(after.score().hard()).isZero();
  }

  @Test
  void theSameWeekComesOutAgain() {
    WeekProblem problem =
        week(5, false, session(FRIDAY, Region.values()), session(MONDAY, Region.LOWER));
    WeekPlan plan = planner().plan(problem, QUICK);
    assertThat(planner().plan(problem, QUICK)).isEqualTo(plan);
    assertThat(plan.solver().complete()).isTrue();
    assertThat(plan.solver().moves()).isPositive();
    assertThat(plan.plans())
        .extracting(day -> day.problem().targets().size())
        .as("in the order of the problem")
        .isEqualTo(problem.sessions().stream().map(s -> s.problem().targets().size()).toList());
  }

  @Test
  void aStoppedWeekSaysSo() {
    WeekPlanner planner = planner();
    planner.stop();
    WeekPlan plan = planner.plan(week(1, false, session(MONDAY, Region.LOWER)), QUICK);
    assertThat(plan.solver().complete()).isFalse();
    assertThat(plan.plans()).hasSize(1);
  }

  @Test
  void otherSessionsThanAskedAreRefused() {
    WeekProblem problem = week(1, false, session(MONDAY, Region.LOWER));
    assertThatThrownBy(() -> planner().score(problem, List.of(), SCORED))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 sessions, and 0");
  }
}
