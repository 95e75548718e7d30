package counterset.catalogue;

import counterset.model.Catalogue;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The embedded catalogue in a form that is read many times faster than its files, compiled from
 * them when the jar is built.
 *
 * <p>Outside a jar it is never looked at: there the files may be newer.
 */
final class Compiled {

  static final String FILE = "catalogue/compiled.bin";

  private Compiled() {}

  /** Compiles the files among the classes; the build calls this. */
  public static void main(String[] classes) throws IOException {
    Files.write(
        Path.of(classes[0]).resolve(FILE), CompiledWriter.bytes(Catalogues.embeddedFiles()));
  }

  /** The compiled catalogue; empty outside a jar and in one that was built without it. */
  static Optional<Catalogue> catalogue() {
    URL url = Compiled.class.getClassLoader().getResource(FILE);
    if (url == null || !url.getProtocol().equals("jar")) {
      return Optional.empty();
    }
    try (InputStream in = url.openStream()) {
      return Optional.of(CompiledReader.catalogue(in.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
