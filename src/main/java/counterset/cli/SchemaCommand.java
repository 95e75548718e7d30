package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.Schemas;
import counterset.spelling.Nearest;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints a JSON Schema. */
@Command(
    name = "schema",
    description =
        "Prints the JSON Schema (draft 2020-12) of a kind of file, or the names of the kinds.",
    mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {

  private final Shell shell;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      description = "The kind of file; without it the kinds are listed.")
  private String name;

  SchemaCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    if (name == null) {
      Schemas.names().forEach(known -> shell.out().print(known + "\n"));
      return Exit.DONE;
    }
    if (!Schemas.names().contains(name)) {
      throw new BadRequest(
          "There is no schema ("
              + name
              + ")."
              + Nearest.maybe(name, Schemas.names())
              + " There are: "
              + String.join(", ", Schemas.names())
              + ".");
    }
    shell.out().print(Schemas.text(name));
    return Exit.DONE;
  }
}
