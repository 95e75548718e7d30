package counterset.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** All commands, and what happens when one fails. */
final class Commands {

  private Commands() {}

  /** Runs one command line and returns its exit status. */
  static int run(Shell shell, String... args) {
    CommandLine line = new CommandLine(new Counterset());
    line.addSubcommand(new PlanCommand(shell))
        .addSubcommand(new CheckCommand(shell))
        .addSubcommand(LogCommand.withSubcommands(shell))
        .addSubcommand(CatalogueCommand.withSubcommands(shell))
        .addSubcommand(new SchemaCommand(shell));
    Converters.register(line);
    Failures failures = new Failures(shell);
    return line.setOut(shell.out())
        .setErr(shell.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setParameterExceptionHandler(failures::usage)
        .setExecutionExceptionHandler(failures::execution)
        .setUsageHelpWidth(100)
        .execute(args);
  }

  /** The version of this program, as it was built. */
  static String version() {
    try (InputStream in = Commands.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The root: it says what there is. */
  @Command(
      name = "counterset",
      description = "Plans strength sessions that end on the second.",
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      synopsisSubcommandLabel = "COMMAND")
  static final class Counterset implements Runnable {

    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
      throw new CommandLine.ParameterException(
          spec.commandLine(),
          "A command is missing. Maybe: counterset plan \"20 min, lower body, dumbbells\"");
    }
  }

  /** Tells picocli the version. */
  static final class Version implements CommandLine.IVersionProvider {

    @Override
    public String[] getVersion() {
      return new String[] {"counterset " + version()};
    }
  }
}
