package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SwapCommandTest {

  @TempDir Path folder;

  @BeforeEach
  void write() {
    write(GoodPlan.whole());
  }

  private void write(ObjectNode plan) {
    Cli.write(folder, "plan.json", Json.pretty(plan));
  }

  private Cli swap(String... options) {
    List<String> args = new ArrayList<>(List.of("swap", "plan.json"));
    args.addAll(List.of(options));
    return Cli.fixed(folder, args.toArray(String[]::new));
  }

  private String plan() {
    return Cli.read(folder.resolve("plan.json"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3B", "2A", "2B", "8a", "4A"})
  void whatIsTakenIsWorthWhatTheListSays(String at) {
    JsonNode list = swap("--at", at, "--format", "json").succeeds().json().tree();
    for (int number : new int[] {1, 2, 7}) {
      Cli taken =
          swap("--at", at, "--take", "" + number, "--write", "new.json", "--write", "new.txt")
              .succeeds();
      assertThat(Cli.read(folder.resolve("new.txt"))).isEqualTo(taken.out());
      Cli check = Cli.fixed(folder, "check", "new.json", "--format", "json").succeeds();
      JsonNode replacement = list.at("/replacements/" + (number - 1));
      for (String level : new String[] {"hard", "medium", "soft"}) {
        assertThat(check.json().at("/score/" + level)).isEqualTo(replacement.at("/score/" + level));
      }
      assertThat(check.json().at("/differences").size()).isZero();
      assertThat(taken.err()).contains(replacement.get("name").textValue() + " instead of ");
    }
    assertThat(plan()).isEqualTo(Json.pretty(GoodPlan.whole()));
  }

  @Test
  void anExerciseIsTakenByIdOrName() {
    String byId =
        swap("--at", "4B", "--take", "floor-squeeze-stance", "--format", "json").succeeds().out();
    assertThat(swap("--at", "4B", "--take", "Floor-squeeze stance", "--format", "json").out())
        .isEqualTo(byId);
    assertThat(byId).contains("floor-squeeze-stance").doesNotContain("sumo-floor-pull");
  }

  @Test
  void thePlanItselfIsOverwrittenOnlyWhereItIsNamed() {
    swap("--at", "3B", "--take", "1").succeeds();
    assertThat(plan()).isEqualTo(Json.pretty(GoodPlan.whole()));
    Cli taken = swap("--at", "3B", "--take", "1", "--write", "plan.json").succeeds();
    assertThat(plan()).isNotEqualTo(Json.pretty(GoodPlan.whole()));
    assertThat(taken.err()).startsWith("3B: ");
    Cli.fixed(folder, "check", "plan.json").succeeds();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--at 9A | --at (9A): the plan has no such place. The places of this plan are 1A to 8B.",
        "--at 3C | --at (3C): the plan has no such place. The places of this plan are 1A to 8B.",
        "--at third | --at (third) must be a place such as 3B: superset 3, second exercise. The"
            + " places of this plan are 1A to 8B.",
        "--all | --at is missing: the place to swap, such as --at 1A. The places of this plan are"
            + " 1A to 8B.",
        "--at 1A | --at (1A): Dumbbell Romanian deadlift is kept there, as the plan's problem asks."
            + " Maybe add --release, which keeps it no more.",
        "--at 3B --take 0 | --take (0) must be from 1 to ",
        "--at 3B --take -1 | --take (-1) must be from 1 to ",
        "--at 3B --take 99999999999 | --take (99999999999) must be from 1 to ",
        "--at 3B --take gobelt-squat | --take (gobelt-squat) is neither a number of the list nor a"
            + " known exercise. Maybe \"goblet-squat\"?",
        "--at 3B --write new.json | --write needs --take: only a plan with a replacement is"
            + " written.",
        "--at 3B --reflow | --reflow needs --take: the rest is planned around a replacement.",
        "--at 3B --take 1 --write new.doc | --write (new.doc) has no ending that is known. Maybe"
            + " one of .txt, .json",
      })
  void whatCannotBeReadIsRefusedWithARemedy(String options, String message) {
    Cli swap = swap(options.split(" ")).isRefused(1);
    assertThat(swap.err()).startsWith(message);
    assertThat(folder.toFile().list()).containsExactly("plan.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "burpee | Burpee cannot stand at 3B: it goes against sore knees",
        "dumbbell-reverse-lunge | Dumbbell reverse lunge cannot stand at 3B: it ",
        "warm-march | March in place cannot stand at 3B: it is for the warm-up.",
        "dumbbell-partial-squat | Dumbbell partial squat cannot stand at 3B: it stands at 1B, and"
            + " nothing comes twice. Maybe swap that place first.",
        "dumbbell-wide-stance-calf-raise | Dumbbell wide-stance calf raise stands at 3B already.",
        "ankle-weight-side-lying-leg-sweep | Ankle-weight side-lying leg sweep at 3B would break"
            + " a rule.",
        "crunch | Crunch cannot stand at 3B: it trains no target first."
      })
  void whatCannotStandThereIsSaidWithTheReason(String exercise, String message) {
    Cli swap = swap("--at", "3B", "--take", exercise, "--write", "new.json");
    assertThat(swap.status()).as(swap.toString()).isEqualTo(Exit.INFEASIBLE);
    assertThat(swap.out()).isEmpty();
    assertThat(swap.speaksPlainly().err()).startsWith(message);
    assertThat(folder.toFile().list()).containsExactly("plan.json");
  }

  @Test
  void aKeptPlaceIsReleased() {
    Cli taken = swap("--at", "1A", "--release", "--take", "1", "--write", "new.json").succeeds();
    assertThat(taken.err()).contains(" instead of Dumbbell Romanian deadlift");
    assertThat(Cli.read(folder.resolve("new.json"))).contains("\"keep\": []");
    Cli.fixed(folder, "check", "new.json").succeeds();
  }

  @Test
  void anEmptyPlaceHasNothingToSwap() {
    ObjectNode plan = GoodPlan.byHand();
    GoodPlan.exercises(plan, 4).remove(1);
    GoodPlan.exercises(plan, 5).removeAll();
    write(plan);
    assertThat(swap("--at", "4B").isRefused(1).err())
        .startsWith("--at (4B): the place is empty, so there is nothing to swap.");
    assertThat(swap("--at", "5A").isRefused(1).err()).startsWith("--at (5A): the place is empty");
  }

  @Test
  void aPlanEditedByHandIsSwappedAsItsSupersetsStand() {
    ObjectNode plan = GoodPlan.whole();
    GoodPlan.put(plan, "4A", "floor-squeeze-stance");
    write(plan);
    Cli list = swap("--at", "4A").succeeds();
    assertThat(list.out()).startsWith("4A: Floor-squeeze stance\n");
    assertThat(list.err())
        .startsWith("The file says something else than its session works out to; the supersets")
        .contains("plan.json:", " more: counterset check plan.json tells them all.");
  }

  @Test
  void aBrokenPlanCanBeMended() {
    ObjectNode plan = GoodPlan.byHand();
    GoodPlan.put(plan, "3A", "goblet-squat");
    write(plan);
    Cli other = swap("--at", "4A", "--take", "1", "--write", "new.json");
    assertThat(other.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(other.err()).contains("The session still breaks a rule:\n  3A: Goblet squat goes");
    Cli mended = swap("--at", "3A", "--take", "1", "--write", "new.json").succeeds();
    assertThat(mended.err()).contains(": mends a rule, +1.");
    Cli.fixed(folder, "check", "new.json").succeeds();
  }

  @Test
  void whatIsNoPlanOrOfAnotherCatalogueIsRefusedWithItsPlaces() throws Exception {
    ObjectNode plan = GoodPlan.whole();
    GoodPlan.put(plan, "3A", "goblin-squat");
    GoodPlan.put(plan, "4A", "warm-march");
    write(plan);
    assertThat(swap("--at", "3A").isRefused(2).err())
        .contains("plan.json:", "/supersets/2/exercises/0", "Maybe \"goblet-squat\"?");
    Files.writeString(folder.resolve("plan.json"), "{\"problem\": 1}");
    assertThat(swap("--at", "3A").isRefused(1).err()).contains("this is no plan file");
    Files.delete(folder.resolve("plan.json"));
    swap("--at", "3A").isRefused(1);
  }

  @Test
  void theRestIsPlannedAroundAChoiceThatWouldBreakARule() {
    String[] alone = {"--at", "3B", "--take", "ankle-weight-side-lying-leg-sweep"};
    Cli refused = swap(alone);
    assertThat(refused.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(refused.err()).contains("\nMaybe add --reflow, ");
    Cli taken =
        swap(
                "--at",
                "3B",
                "--take",
                "ankle-weight-side-lying-leg-sweep",
                "--reflow",
                "--effort",
                "quick",
                "--write",
                "new.json")
            .succeeds();
    assertThat(taken.err()).contains("The other changes bring ", "and mend what it would have");
    Cli.fixed(folder, "check", "new.json").succeeds();
    assertThat(taken.out()).contains("Ankle-weight side-lying leg sweep");
  }

  @Test
  void helpNamesTheExitStatus() {
    assertThat(swap("--help").succeeds().out()).contains("Exit status: 0 ");
  }
}
