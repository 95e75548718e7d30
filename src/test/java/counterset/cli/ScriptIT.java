package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script beside the jar does what the jar does. */
class ScriptIT {

  private static final Path SCRIPT = Path.of("target", "counterset").toAbsolutePath();

  @TempDir Path folder;

  @Test
  void theScriptGivesTheBytesOfTheJar() throws Exception {
    String jar = Jar.in(folder).run("plan", Cli.ASK, "--effort", "quick").succeeds().out();
    assertThat(jar).contains("\nORDER\n");
    assertThat(script(SCRIPT, 0, "plan", Cli.ASK, "--effort", "quick")).isEqualTo(jar);
  }

  @Test
  void throughALinkAndWithASpaceInAWordItWorksToo() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("a link"), SCRIPT);
    assertThat(script(link, 0, "catalogue", "show", "goblet-squat")).startsWith("Goblet squat\n");
    Files.delete(link);
  }

  @Test
  void theStatusIsPassedOn() throws Exception {
    assertThat(script(SCRIPT, Exit.BAD_INPUT, "plan", "no such thing at all")).isEmpty();
    assertThat(script(SCRIPT, Exit.BAD_INPUT, "plan", "x y z", "--effort", "thorough")).isEmpty();
  }

  private String script(Path script, int status, String... args) throws Exception {
    assumeTrue(Files.exists(Path.of("/bin/sh")), "this system has no shell for scripts");
    List<String> command = new ArrayList<>(List.of(script.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.redirectError(folder.resolve("messages").toFile());
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(Jar.end(process, 300)).isEqualTo(status);
    return out;
  }
}
