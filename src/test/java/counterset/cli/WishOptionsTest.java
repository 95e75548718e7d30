package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --keep, --with, --without}. */
class WishOptionsTest {

  private static final String ASK = "10 min, lower body, dumbbells";
  private static final Catalogue CATALOGUE = Catalogues.embedded();

  @TempDir Path folder;

  private Cli plan(String... options) {
    List<String> args =
        new ArrayList<>(List.of("plan", ASK, "--effort", "quick", "--format", "json"));
    args.addAll(List.of(options));
    return Cli.run(folder, args.toArray(String[]::new));
  }

  @Test
  void whatIsKeptStandsWhereItIsKept() {
    Cli plan = plan("--keep", "2A=goblet-squat").succeeds();

    assertThat(plan.json().tree().at("/supersets/1/exercises/0").textValue())
        .isEqualTo("goblet-squat");
    assertThat(plan.json().tree().at("/problem/keep/0/at").textValue()).isEqualTo("2A");
  }

  @Test
  void aNameOfTheCatalogueWillDo() {
    Cli plan = plan("--keep", "1B = Dumbbell calf raise", "--with", "suitcase deadlift").succeeds();

    assertThat(plan.json().tree().at("/supersets/0/exercises/1").textValue())
        .isEqualTo("dumbbell-calf-raise");
    assertThat(plan.json().tree().at("/problem/include/0").textValue())
        .isEqualTo("suitcase-deadlift");
  }

  @Test
  void aFamilyOrPatternIsLeftOut() {
    Cli plan = plan("--without", "squats", "--without", "lunge").succeeds();

    List<String> patterns = new ArrayList<>();
    plan.json()
        .tree()
        .at("/supersets")
        .findValues("exercises")
        .forEach(
            list ->
                list.forEach(
                    id -> patterns.add(CATALOGUE.exercises().get(id.textValue()).pattern())));
    assertThat(patterns).isNotEmpty().doesNotContain("squat", "lunge");
  }

  @Test
  void aProblemFileGetsThemToo() {
    Cli.write(
        folder,
        "legs.json",
        "{\"problem\":1,\"title\":\"Legs\",\"minutes\":10,\"targets\":[{\"muscle\":\"lower\"}],"
            + "\"keep\":[{\"at\":\"1A\",\"exercise\":\"bodyweight-squat\"}]}");
    Cli plan =
        Cli.run(
                folder,
                "plan",
                "legs.json",
                "--keep",
                "1A=glute-bridge",
                "--effort=quick",
                "--format=json")
            .succeeds();

    assertThat(plan.json().tree().at("/supersets/0/exercises/0").textValue())
        .isEqualTo("glute-bridge");
  }

  @Test
  void allFaultsAreNamedAtOnce() {
    Cli plan =
        plan("--keep", "goblet-squat", "--with", "gobblet sqat", "--without", "dumbbells")
            .isRefused(3);

    assertThat(plan.faults().get(0)).contains("--keep (goblet-squat): Say where to keep it");
    assertThat(plan.faults().get(1)).contains("--with (gobblet sqat): ", "goblet squat");
    assertThat(plan.faults().get(2)).contains("--without (dumbbells): ");
  }

  @Test
  void whatCannotBeAtOnceIsRefused() {
    Cli plan = plan("--keep", "1A=goblet-squat", "--without", "squats").isRefused(1);

    assertThat(plan.faults().get(0)).contains("goblet-squat", "excluded as well");
    assertThat(plan("--keep", "1C=goblet-squat").isRefused(1).faults().get(0))
        .contains("The position (C) of (1C) does not exist");
  }

  @Test
  void aCalendarNeedsADayAndATimeThatIsOne() {
    assertThat(plan("--write", "a.ics").isRefused(1).faults().get(0))
        .contains("--write (a.ics) needs the day of the session. Maybe add --date");
    assertThat(plan("--start", "6pm").isRefused(1).faults().get(0))
        .contains("--start (6pm) is no time of day");
    plan("--write", "a.ics", "--date", "2026-03-02", "--start", "18:30").succeeds();
    assertThat(Cli.read(folder.resolve("a.ics"))).contains("DTSTART:20260302T183000");
  }
}
