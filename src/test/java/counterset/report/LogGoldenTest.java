package counterset.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Entries;
import counterset.journal.DonePlan;
import counterset.journal.Entry;
import counterset.journal.Lift;
import counterset.json.JsonDocument;
import counterset.model.Muscle;
import counterset.model.Plan;
import counterset.report.json.LogJson;
import counterset.report.text.LogList;
import counterset.report.text.LogSummary;
import counterset.training.Summary;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A journal of two weeks as text and as JSON. */
class LogGoldenTest {

  private static final LocalDate SUNDAY = LocalDate.of(2026, 3, 8);

  private static Entry done(
      Plan plan, String date, double rpe, OptionalDouble mass, Lift... lifts) {
    DonePlan done = new DonePlan(plan);
    return Entry.builder()
        .date(LocalDate.parse(date))
        .title(plan.problem().title())
        .minutes(done.minutes())
        .rpe(rpe)
        .note(lifts.length == 0 ? Optional.empty() : Optional.of("Knees quiet; the row felt easy."))
        .mass(mass)
        .exercises(done.exercises())
        .loads(List.of(lifts))
        .muscles(done.muscles())
        .energy(done.energy(done.minutes()))
        .build();
  }

  private static List<Entry> entries() {
    OptionalDouble mass = OptionalDouble.of(70);
    return List.of(
        done(Plans.legs(), "2026-02-25", 5, mass),
        done(
            Plans.legs(),
            "2026-03-02",
            6,
            mass,
            new Lift("goblet-squat", 10, 14, 1),
            new Lift("suitcase-deadlift", 7.5, 12, 1),
            new Lift("suitcase-deadlift", 7.5, 10, 2)),
        done(Plans.upperRounds(), "2026-03-04", 5, OptionalDouble.empty()),
        done(Plans.legs(), "2026-03-06", 6.5, mass),
        Entries.lifted("2026-03-06", "an-exercise-of-another-catalogue", 4, 20));
  }

  private static Summary summary(List<Entry> entries) {
    List<String> muscles =
        Plans.CATALOGUE.muscles().values().stream()
            .filter(Muscle::defaultTarget)
            .map(Muscle::id)
            .toList();
    return Summary.of(entries, SUNDAY, 3, muscles, OptionalDouble.empty());
  }

  @Test
  void text() {
    Golden.check(
        "log",
        ".txt",
        Map.of(
            "list", LogList.of(entries(), Plans.CATALOGUE, false),
            "summary", LogSummary.of(summary(entries()), Plans.CATALOGUE, false),
            "summary-of-nothing", LogSummary.of(summary(List.of()), Plans.CATALOGUE, false)));
  }

  @Test
  void json() {
    Golden.check(
        "logjson",
        ".json",
        Map.of("list", LogJson.list(entries()), "summary", LogJson.summary(summary(entries()))));
    assertThat(JsonDocument.parse("list", LogJson.list(entries())).at("/entries")).hasSize(5);
  }

  @Test
  void anEvenWeekSaysWhyThereIsNoMonotonyAndAMonotonousOneWarns() {
    List<Entry> even =
        SUNDAY
            .minusDays(6)
            .datesUntil(SUNDAY.plusDays(1))
            .map(d -> Entries.rated("" + d, 5))
            .toList();
    assertThat(LogSummary.of(summary(even), Plans.CATALOGUE, false))
        .contains("Every day had the same load: monotony has no bound.");
    assertThat(LogSummary.of(summary(even.subList(0, 6)), Plans.CATALOGUE, false))
        .contains("  ! Monotony is above 2.0", "      2.45 ");
    assertThat(LogJson.summary(summary(even))).doesNotContain("\"monotony\": 0", "NaN", "Infinity");
  }
}
