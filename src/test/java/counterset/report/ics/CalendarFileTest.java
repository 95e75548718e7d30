package counterset.report.ics;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import counterset.report.Golden;
import counterset.report.Hostile;
import counterset.report.Plans;
import counterset.search.WeekPlanner;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/** Calendar entries, read and judged by another library than the one that writes them. */
class CalendarFileTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Optional<LocalTime> EVENING = Optional.of(LocalTime.of(18, 30));

  @Test
  void looksAsAgreed() {
    Map<String, String> files = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> files.put(name, CalendarFile.of(plan, DAY, EVENING)));
    Golden.check("calendar", ".ics", files);
  }

  @Test
  void isValidAndSaysWhenAndWhat() {
    Plan plan = Plans.legs();
    VEvent event = events(CalendarFile.of(plan, DAY, EVENING)).get(0);

    assertThat(event.getDateStart().getValue().getRawComponents().toString(true, true))
        .isEqualTo("2026-03-02T18:30:00");
    assertThat(event.getDateStart().getValue().hasTime()).isTrue();
    assertThat(event.getDuration().getValue().toMillis())
        .isEqualTo(plan.totals().seconds() * 1000L);
    assertThat(event.getSummary().getValue()).isEqualTo("Lunch-break legs");
    assertThat(event.getDescription().getValue())
        .contains("1. Goblet squat + Dumbbell Romanian deadlift", "Stop at once on chest pain");
  }

  @Test
  void withoutATimeItTakesTheDay() {
    VEvent event = events(CalendarFile.of(Plans.legs(), DAY, Optional.empty())).get(0);

    assertThat(event.getDateStart().getValue().hasTime()).isFalse();
    assertThat(event.getDuration().getValue().getDays()).isEqualTo(1);
  }

  @Test
  void keepsItsUidWhateverIsPlannedForTheDay() {
    String uid = uid(CalendarFile.of(Plans.legs(), DAY, EVENING));

    assertThat(uid(CalendarFile.of(Plans.legs(), DAY, Optional.empty()))).isEqualTo(uid);
    assertThat(uid(CalendarFile.of(Plans.legs(), DAY.plusDays(1), EVENING))).isNotEqualTo(uid);
    assertThat(uid(CalendarFile.of(Plans.upperRounds(), DAY, EVENING))).isNotEqualTo(uid);
  }

  @Test
  void aWeekHasItsDays() {
    List<VEvent> events = events(CalendarFile.of(List.of(week(), week()), DAY, EVENING));

    assertThat(events.stream().map(event -> event.getDateStart().getValue().getRawComponents()))
        .extracting(start -> start.toString(false, true))
        .containsExactly("2026-03-02", "2026-03-06", "2026-03-09", "2026-03-13");
    assertThat(events.stream().map(event -> event.getUid().getValue()).distinct()).hasSize(4);
  }

  @Test
  void theTimeZoneOfTheMachineChangesNothing() {
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      String there = CalendarFile.of(Plans.legs(), DAY, EVENING);
      TimeZone.setDefault(TimeZone.getTimeZone("America/St_Johns"));
      assertThat(CalendarFile.of(Plans.legs(), DAY, EVENING)).isEqualTo(there);
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @Test
  void whateverTheCatalogueSaysIsText() {
    Plan plan = Hostile.plan();
    VEvent event = events(CalendarFile.of(plan, DAY, EVENING)).get(0);

    assertThat(event.getSummary().getValue()).isEqualTo(plan.problem().title());
    assertThat(event.getDescription().getValue()).contains(Hostile.MARK + "Goblet squat");
  }

  private static String uid(String file) {
    return events(file).get(0).getUid().getValue();
  }

  private static List<VEvent> events(String file) {
    // RFC 5545, 3.1: lines end with CRLF and have at most 75 octets.
    assertThat(file.replace("\r\n", "")).doesNotContain("\n", "\r");
    assertThat(file.split("\r\n")).allMatch(line -> line.length() <= 75);
    List<ICalendar> calendars = Biweekly.parse(file).all();
    assertThat(calendars).hasSize(1);
    assertThat(calendars.get(0).validate(biweekly.ICalVersion.V2_0).isEmpty()).isTrue();
    return calendars.get(0).getEvents();
  }

  private static WeekPlan week() {
    List<Plan> plans = List.of(Plans.legs(), Plans.upperRounds());
    WeekProblem problem =
        new WeekProblem(
            "Two days",
            List.of(
                new WeekSession(DayOfWeek.MONDAY, plans.get(0).problem()),
                new WeekSession(DayOfWeek.FRIDAY, plans.get(1).problem())),
            List.of(),
            Map.of(),
            false,
            Map.of(),
            1);
    return new WeekPlanner(Plans.CATALOGUE, "test")
        .score(
            problem,
            plans.stream().map(Plan::session).toList(),
            new SolverNote(1, "none", "test", 0, true));
  }
}
