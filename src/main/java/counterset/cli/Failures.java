package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.InvalidInputException;
import counterset.json.Violation;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What a user sees of a failure: one line a fault, never a stack trace. */
final class Failures {

  private final Shell shell;

  Failures(Shell shell) {
    this.shell = shell;
  }

  int usage(ParameterException e, String[] args) {
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    shell.say(command + ": " + e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, shell.err());
    shell.say("Try: " + command + " --help");
    return Exit.BAD_INPUT;
  }

  int execution(Exception e) {
    if (e instanceof InvalidInputException invalid) {
      invalid.violations().stream().map(Violation::toString).forEach(shell::say);
      return Exit.BAD_INPUT;
    }
    if (e instanceof BadRequest bad) {
      bad.lines().forEach(shell::say);
      return Exit.BAD_INPUT;
    }
    Throwable cause = e.getCause() == null ? e : e.getCause();
    shell.say("Internal error: " + cause + ". Please report it with the command that led to it.");
    return Exit.INTERNAL;
  }
}
