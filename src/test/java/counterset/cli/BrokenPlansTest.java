package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code check} names the rule and the place of whatever one edit breaks in a good plan. */
class BrokenPlansTest {

  @TempDir Path folder;

  static Stream<PlanEdit> edits() {
    return SessionEdits.all();
  }

  @Test
  void theGoodPlanIsGood() {
    for (ObjectNode plan : List.of(GoodPlan.whole(), GoodPlan.byHand())) {
      Cli check = PlanEdit.check(folder, plan, "text");
      assertThat(check.status()).as(check.toString()).isEqualTo(Exit.DONE);
      assertThat(check.out())
          .startsWith("The session keeps every rule.\n")
          .doesNotContain("Unmet wishes", "The file says something else");
    }
  }

  @ParameterizedTest
  @MethodSource("edits")
  void theRuleAndThePlaceAreNamed(PlanEdit edit) {
    Cli check = edit.check(folder, GoodPlan.byHand());
    edit.holds(check);
    assertThat(check.out())
        .startsWith(
            edit.status() == Exit.DONE
                ? "The session keeps every rule.\nUnmet wishes:\n"
                : "The session breaks a rule.\n");
  }

  @ParameterizedTest
  @MethodSource("edits")
  void inAWholePlanTheFiguresThatFollowAreNamedAsWell(PlanEdit edit) {
    Cli check = edit.check(folder, GoodPlan.whole());
    assertThat(check.status())
        .as(check.toString())
        .isEqualTo(edit.status() == Exit.DONE ? Exit.BAD_INPUT : Exit.INFEASIBLE);
    assertThat(check.out())
        .contains("The file says something else than its session works out to:\n")
        .contains(" /score/");
  }
}
