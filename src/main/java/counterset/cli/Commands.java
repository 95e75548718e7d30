package counterset.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** All commands, and what happens when one fails. */
final class Commands {

  private Commands() {}

  /** Runs one command line and returns its exit status. */
  static int run(Shell shell, String... args) {
    Failures failures = new Failures(shell);
    Optional<PlanCommand> plain = PlainPlan.read(shell, args);
    return plain.isPresent() ? call(plain.get(), failures) : parse(shell, failures, args);
  }

  private static int call(PlanCommand command, Failures failures) {
    try {
      return command.call();
    } catch (RuntimeException e) {
      return failures.execution(e);
    }
  }

  private static int parse(Shell shell, Failures failures, String... args) {
    CommandLine line = new CommandLine(new Counterset());
    Map<String, Supplier<Object>> commands = commands(shell);
    // Building the model of a command takes time; only the list of all commands needs them all.
    if (args.length > 0 && commands.containsKey(args[0])) {
      line.addSubcommand(commands.get(args[0]).get());
    } else {
      commands.values().forEach(command -> line.addSubcommand(command.get()));
    }
    Converters.register(line);
    return line.setOut(shell.out())
        .setErr(shell.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setParameterExceptionHandler(failures::usage)
        .setExecutionExceptionHandler((e, command, parsed) -> failures.execution(e))
        .setUsageHelpWidth(100)
        .execute(args);
  }

  private static Map<String, Supplier<Object>> commands(Shell shell) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("plan", () -> new PlanCommand(shell));
    commands.put("week", () -> new WeekCommand(shell));
    commands.put("batch", () -> new BatchCommand(shell));
    commands.put("compare", () -> new CompareCommand(shell));
    commands.put("check", () -> new CheckCommand(shell));
    commands.put("explain", () -> new ExplainCommand(shell));
    commands.put("swap", () -> new SwapCommand(shell));
    commands.put("log", () -> LogCommand.withSubcommands(shell));
    commands.put("catalogue", () -> CatalogueCommand.withSubcommands(shell));
    commands.put("schema", () -> new SchemaCommand(shell));
    return commands;
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
}
