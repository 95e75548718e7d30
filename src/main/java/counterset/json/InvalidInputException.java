package counterset.json;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Input that cannot be used, with all its faults. Its message is one line a fault, made for the
 * user.
 */
public final class InvalidInputException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Violation> violations;

  public InvalidInputException(List<Violation> violations) {
    super(violations.stream().map(Violation::toString).collect(Collectors.joining("\n")));
    this.violations = List.copyOf(violations);
  }

  /** A single fault of an input as a whole. */
  public static InvalidInputException of(String file, String message) {
    return new InvalidInputException(List.of(Violation.of(file, message)));
  }

  /** Does nothing if the list is empty. */
  public static void throwIfAny(List<Violation> violations) {
    if (!violations.isEmpty()) {
      throw new InvalidInputException(violations);
    }
  }

  /** The faults in the order of files and lines; never empty. */
  public List<Violation> violations() {
    return violations;
  }
}
