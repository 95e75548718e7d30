package counterset.cli;

import counterset.search.Effort;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the arguments of a plan that are as plain as they mostly are.
 *
 * <p>Picocli could read them too, but its model of the options takes longer to build than a Java
 * machine takes to start. So only good arguments are read here, and only of the command that is
 * given most; help, faults and whatever else there may be in doubt are left to picocli.
 */
final class PlainPlan {

  private static final Set<String> REPEATED =
      Set.of("--write", "--add-catalogue", "--keep", "--with", "--without");

  private final PlanCommand command;
  private final List<String> ask = new ArrayList<>();
  private final Set<String> given = new HashSet<>();

  private PlainPlan(PlanCommand command) {
    this.command = command;
  }

  /** The command, ready to be called; empty unless all arguments are plain. */
  static Optional<PlanCommand> read(Shell shell, String... args) {
    if (args.length < 2 || !args[0].equals("plan")) {
      return Optional.empty();
    }
    PlainPlan plan = new PlainPlan(new PlanCommand(shell));
    return plan.takeAll(args) ? Optional.of(plan.command) : Optional.empty();
  }

  private boolean takeAll(String[] args) {
    for (int i = 1; i < args.length; i++) {
      String arg = args[i];
      if (arg.equals("--bound")) {
        if (command.bound) {
          return false;
        }
        command.bound = true;
      } else if (arg.startsWith("--")) {
        int equals = arg.indexOf('=');
        String name = equals < 0 ? arg : arg.substring(0, equals);
        i += equals < 0 ? 1 : 0;
        String value = equals < 0 ? i < args.length ? args[i] : "" : arg.substring(equals + 1);
        if (!isPlain(value) || !takeOption(name, value)) {
          return false;
        }
      } else if (isPlain(arg)) {
        ask.add(arg);
      } else {
        return false;
      }
    }
    command.ask = ask;
    return !ask.isEmpty();
  }

  /** Neither empty nor with anything that picocli might take for more than a word. */
  private static boolean isPlain(String word) {
    return !word.isEmpty() && "-@\"'".indexOf(word.charAt(0)) < 0;
  }

  private boolean takeOption(String name, String value) {
    if (!given.add(name) && !REPEATED.contains(name)) {
      return false;
    }
    try {
      switch (name) {
        case "--format" -> command.format = Format.valueOf(value.toUpperCase(Locale.ROOT));
        case "--effort" -> command.search.effort = Effort.valueOf(value.toUpperCase(Locale.ROOT));
        case "--seed" -> command.seed = Long.valueOf(value);
        case "--seconds" -> command.search.seconds = Integer.valueOf(value);
        case "--track" -> command.track = value;
        case "--log" -> command.past.log = value;
        case "--start" -> command.start.start = value;
        case "--date" -> command.past.date = value;
        case "--keep" -> command.wishes.keep.add(value);
        case "--with" -> command.wishes.with.add(value);
        case "--without" -> command.wishes.without.add(value);
        case "--write" -> command.files.add(value);
        case "--catalogue" -> command.catalogues.replacement = value;
        case "--add-catalogue" -> command.catalogues.additions.add(value);
        default -> {
          return false;
        }
      }
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
