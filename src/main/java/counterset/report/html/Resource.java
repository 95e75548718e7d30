package counterset.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Templates, styles and scripts that lie beside these classes. */
final class Resource {

  private Resource() {}

  /** The text of a file. */
  static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The resource (" + name + ") is missing from the program.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The texts of several files, one after the other. */
  static String all(String... names) {
    return Arrays.stream(names).map(Resource::text).collect(Collectors.joining("\n"));
  }
}
