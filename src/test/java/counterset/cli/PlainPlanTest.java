package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The short way to read arguments must tell what the long way tells, or leave them to it. */
class PlainPlanTest {

  private static final PrintWriter NOWHERE = new PrintWriter(Writer.nullWriter());
  private static final Shell SHELL = new Shell(NOWHERE, NOWHERE, false, false, Path.of(""));

  static Stream<List<String>> plain() {
    return Stream.of(
        List.of("plan", "20 min, lower body"),
        List.of("plan", "20", "min,", "lower", "body"),
        List.of("plan", "--seed", "7", "20 min"),
        List.of("plan", "20 min", "--seed=7", "dumbbells"),
        List.of("plan", "20 min", "--format", "json", "--effort=QUICK", "--seconds", "12"),
        List.of("plan", "20 min", "--write", "a.txt", "--write=b.json", "--track", "sore-knees"),
        List.of(
            "plan", "20 min", "--catalogue", "x y", "--add-catalogue=a", "--add-catalogue", "b"),
        List.of("plan", "20 min", "--track=a=b", "--format=Text"),
        List.of("plan", "20 min", "--keep=1A=squat", "--keep", "2B=row", "--with", "plank"),
        List.of("plan", "20 min", "--without", "lunges", "--start", "18:30"),
        List.of("plan", "20 min", "--bound", "--log", "a.jsonl", "--date=2026-03-02"));
  }

  @ParameterizedTest
  @MethodSource("plain")
  void plainArgumentsAreReadAsPicocliReadsThem(List<String> args) {
    Optional<PlanCommand> read = PlainPlan.read(SHELL, args.toArray(String[]::new));
    assertThat(read).isPresent();
    assertThat(values(read.get())).isEqualTo(values(picocli(args)));
  }

  @Test
  void everyOptionIsReadEitherWay() {
    List<String> names =
        new CommandLine(new PlanCommand(SHELL))
            .getCommandSpec().options().stream()
                .map(option -> option.longestName())
                .filter(name -> !List.of("--help", "--version").contains(name))
                .toList();
    String tested = plain().flatMap(List::stream).toList().toString();
    assertThat(names).isNotEmpty().allMatch(tested::contains);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "check|x.json",
        "plan",
        "plan|",
        "plan|--help",
        "plan|20 min|-h",
        "plan|20 min|--version",
        "plan|20 min|--",
        "plan|20 min|--seed",
        "plan|20 min|--seed=",
        "plan|20 min|--seed|-7",
        "plan|20 min|--seed|seven",
        "plan|20 min|--seed|7|--seed|8",
        "plan|20 min|--format|xml",
        "plan|20 min|--effort|none",
        "plan|20 min|--seconds|99999999999",
        "plan|20 min|--sed|7",
        "plan|20 min|--write",
        "plan|@arguments",
        "plan|\"20 min\"",
        "plan|--seed|7"
      })
  void theRestIsLeftToPicocli(String line) {
    assertThat(PlainPlan.read(SHELL, line.split("\\|", -1))).isEmpty();
  }

  private static PlanCommand picocli(List<String> args) {
    PlanCommand command = new PlanCommand(SHELL);
    CommandLine line = new CommandLine(command);
    Converters.register(line);
    line.parseArgs(args.subList(1, args.size()).toArray(String[]::new));
    return command;
  }

  private static List<Object> values(PlanCommand command) {
    return Arrays.asList(
        command.ask,
        command.format,
        command.search.effort,
        command.seed,
        command.search.seconds,
        command.track,
        command.files,
        command.catalogues.replacement,
        command.catalogues.additions,
        command.bound,
        command.past.log,
        command.past.date,
        command.start.start,
        command.wishes.keep,
        command.wishes.with,
        command.wishes.without);
  }
}
