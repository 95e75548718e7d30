package counterset.report.file;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The kinds of file that something can be written to, by the ending of the name. */
public final class Kinds<T> {

  private final Map<String, Function<T, String>> byEnding = new LinkedHashMap<>();

  Kinds() {}

  /** Registers a kind; an ending goes before another one that it ends with. */
  Kinds<T> with(String ending, Function<T, String> form) {
    byEnding.put(ending, form);
    return this;
  }

  /** Whether a file name has an ending that is known. */
  public boolean knows(String file) {
    return ending(file).isPresent();
  }

  /** Whether a file is of the kind that an ending stands for. */
  public boolean isOf(String file, String ending) {
    return ending(file).equals(Optional.of(ending));
  }

  /** The known endings, for messages. */
  public String endings() {
    return String.join(", ", byEnding.keySet());
  }

  /** The text of a file whose ending is known. */
  public String render(String file, T what) {
    return byEnding.get(ending(file).orElseThrow()).apply(what);
  }

  private Optional<String> ending(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return byEnding.keySet().stream().filter(name::endsWith).findFirst();
  }
}
