package counterset.cli;

import java.util.List;

/**
 * What the user asked for cannot be done as it is asked: all that is wrong with it, one line each.
 */
final class BadRequest extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<String> lines;

  BadRequest(String... lines) {
    this(List.of(lines));
  }

  BadRequest(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  List<String> lines() {
    return lines;
  }
}
