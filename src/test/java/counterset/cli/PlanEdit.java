package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * One edit of a good plan.
 *
 * @param status how a check of the edited plan ends
 * @param says what the check says on one line, in this order
 */
record PlanEdit(String name, int status, Consumer<ObjectNode> change, List<String> says) {

  static PlanEdit of(String name, int status, Consumer<ObjectNode> change, String... says) {
    return new PlanEdit(name, status, change, List.of(says));
  }

  /** Edits a plan and checks it. */
  Cli check(Path folder, ObjectNode plan) {
    change.accept(plan);
    return check(folder, plan, "text");
  }

  /** Checks a plan, and prints the result as text or json. */
  static Cli check(Path folder, ObjectNode plan, String format) {
    Cli.write(folder, "plan.json", Json.pretty(plan));
    return Cli.fixed(folder, "check", "plan.json", "--format", format).speaksPlainly();
  }

  /** The status is right and some line says what it should. */
  void holds(Cli check) {
    assertThat(check.status()).as(check.toString()).isEqualTo(status);
    assertThat((check.out() + check.err()).lines())
        .as(check.toString())
        .anySatisfy(line -> assertThat(line).containsSubsequence(says.toArray(String[]::new)));
  }

  @Override
  public String toString() {
    return name;
  }
}
