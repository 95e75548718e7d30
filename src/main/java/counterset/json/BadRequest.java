package counterset.json;

import java.util.List;

/**
 * What the user asked for cannot be done as it is asked: all that is wrong with it, one line each.
 */
public final class BadRequest extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<String> lines;

  public BadRequest(String... lines) {
    this(List.of(lines));
  }

  public BadRequest(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  /** One line a fault; never empty. */
  public List<String> lines() {
    return lines;
  }
}
