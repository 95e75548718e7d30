package counterset.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Looks things up in the catalogue. */
@Command(
    name = "catalogue",
    description = "Lists exercises, shows one, or tells where the catalogue is thin.",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "(list | show | gaps)")
final class CatalogueCommand implements Runnable {

  @Spec private CommandSpec spec;

  static CommandLine withSubcommands(Shell shell) {
    return new CommandLine(new CatalogueCommand())
        .addSubcommand(new CatalogueListCommand(shell))
        .addSubcommand(new CatalogueShowCommand(shell))
        .addSubcommand(new CatalogueGapsCommand(shell));
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to do. Maybe: counterset catalogue list");
  }
}
