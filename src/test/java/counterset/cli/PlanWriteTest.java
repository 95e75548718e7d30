package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --write}: files appear whole or not at all. */
class PlanWriteTest {

  @TempDir Path folder;

  private Cli write(String... files) {
    List<String> args = new ArrayList<>();
    args.addAll(List.of("plan", "6 min, calves, quadriceps, hamstrings", "--effort", "quick"));
    for (String file : files) {
      args.addAll(List.of("--write", file));
    }
    return Cli.run(folder, args.toArray(String[]::new));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void textAndJsonAreWhatStandardOutputHas() throws IOException {
    Cli plan = write("plan.txt", "plan.JSON").succeeds();
    assertThat(names()).containsExactly("plan.JSON", "plan.txt");
    assertThat(plan.out()).endsWith("\n\n" + Cli.read(folder.resolve("plan.txt")));
    assertThat(
            Cli.run(
                    folder,
                    "plan",
                    "6 min, calves, quadriceps, hamstrings",
                    "--effort",
                    "quick",
                    "--format",
                    "json")
                .out())
        .isEqualTo(Cli.read(folder.resolve("plan.JSON")));
  }

  @Test
  void aFileThatIsThereIsReplaced() throws IOException {
    Cli.write(folder, "plan.txt", "old ".repeat(10_000));
    write("plan.txt").succeeds();
    assertThat(Cli.read(folder.resolve("plan.txt"))).contains("ORDER").doesNotContain("old old");
    assertThat(names()).containsExactly("plan.txt");
  }

  @Test
  void filesCanBeReadByWhomeverOtherFilesCan() throws IOException {
    write("plan.txt").succeeds();
    Path other = Cli.write(folder, "other.txt", "");
    if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
      assertThat(Files.getPosixFilePermissions(folder.resolve("plan.txt")))
          .isEqualTo(Files.getPosixFilePermissions(other));
    }
  }

  @Test
  void aFolderThatIsMissingKeepsTheOtherFilesFromAppearing() throws IOException {
    Cli plan = write("plan.txt", "nowhere" + File.separator + "plan.json").isRefused(1);
    assertThat(plan.err()).contains("plan.json: the folder (nowhere) does not exist. Maybe ");
    assertThat(names()).isEmpty();
  }

  @Test
  void aTargetThatIsAFolderKeepsTheOtherFilesFromAppearing() throws IOException {
    Files.createDirectory(folder.resolve("plans.json"));
    Cli plan = write("plan.txt", "plans.json").isRefused(1);
    assertThat(plan.err()).contains("plans.json: is a folder. Maybe name a file in it.");
    assertThat(names()).containsExactly("plans.json");
  }

  @Test
  void everyBadTargetIsNamedInOneRun() throws IOException {
    Files.createDirectory(folder.resolve("plans.json"));
    write("no/a.txt", "plans.json", "nor/b.json").isRefused(3);
  }

  @Test
  void unknownEndingsAreRefusedBeforeAnythingIsPlanned() throws IOException {
    Cli plan = write("plan.pdf", "plan", "plan.txt").isRefused(2);
    assertThat(plan.faults().get(0))
        .startsWith("--write (plan.pdf) has no ending that is known. Maybe one of .txt, .json, ");
    assertThat(plan.faults().get(1)).startsWith("--write (plan) ");
    assertThat(names()).isEmpty();
  }

  @Test
  void anInfeasibleSessionWritesNothing() throws IOException {
    Cli plan = Cli.run(folder, "plan", "2 min, lower body", "--write", "plan.txt");
    assertThat(plan.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(names()).isEmpty();
  }
}
