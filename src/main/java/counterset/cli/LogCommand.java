package counterset.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Keeps a journal of sessions that were done. */
@Command(
    name = "log",
    description = "Adds a session that was done to a journal, lists the journal, or sums it up.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "(add | list | summary)")
final class LogCommand implements Runnable {

  @Spec private CommandSpec spec;

  static CommandLine withSubcommands(Shell shell) {
    return new CommandLine(new LogCommand())
        .addSubcommand(new LogAddCommand(shell))
        .addSubcommand(new LogListCommand(shell))
        .addSubcommand(new LogSummaryCommand(shell));
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to do. Maybe: counterset log list --log anna.jsonl");
  }
}
