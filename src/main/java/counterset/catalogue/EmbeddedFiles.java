package counterset.catalogue;

import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** The catalogue on the class path, be it a directory of classes or a jar. */
final class EmbeddedFiles {

  private static final String ROOT = "catalogue/";

  private EmbeddedFiles() {}

  static CatalogueFiles read() {
    return read(EmbeddedFiles.class.getClassLoader());
  }

  /** The files of figures alone, which {@link #read} leaves out of a jar. */
  static List<JsonDocument> figures() {
    return onClassPath(
        EmbeddedFiles.class.getClassLoader(),
        jar -> folder(jar, CatalogueFiles.FIGURES),
        directory -> CatalogueFiles.figures(directory).stream().map(JsonFiles::read).toList());
  }

  static CatalogueFiles read(ClassLoader loader) {
    return onClassPath(
        loader, EmbeddedFiles::fromJar, directory -> CatalogueFiles.in(directory, true));
  }

  private static <T> T onClassPath(
      ClassLoader loader, Function<JarFile, T> fromJar, Function<Path, T> fromDirectory) {
    URL anchor = loader.getResource(ROOT + CatalogueFiles.MUSCLES);
    if (anchor == null) {
      throw new IllegalStateException("The catalogue is missing from this program.");
    }
    try {
      URLConnection connection = anchor.openConnection();
      if (connection instanceof JarURLConnection jar) {
        jar.setUseCaches(false);
        try (JarFile file = jar.getJarFile()) {
          return fromJar.apply(file);
        }
      }
      return fromDirectory.apply(Path.of(anchor.toURI()).getParent());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static CatalogueFiles fromJar(JarFile jar) {
    return new CatalogueFiles(
        Optional.of(document(jar, ROOT + CatalogueFiles.MUSCLES)),
        Optional.of(document(jar, ROOT + CatalogueFiles.EQUIPMENT)),
        Optional.of(document(jar, ROOT + CatalogueFiles.LIMITATIONS)),
        Optional.empty(),
        optional(jar, ROOT + CatalogueFiles.PATTERNS),
        optional(jar, ROOT + CatalogueFiles.REGIONS),
        folder(jar, CatalogueFiles.EXERCISES),
        List.of(),
        List.of());
  }

  private static List<JsonDocument> folder(JarFile jar, String folder) {
    return jar.stream()
        .map(JarEntry::getName)
        .filter(name -> name.startsWith(ROOT + folder + "/") && name.endsWith(".json"))
        .sorted()
        .map(name -> document(jar, name))
        .toList();
  }

  private static Optional<JsonDocument> optional(JarFile jar, String name) {
    return jar.getJarEntry(name) == null ? Optional.empty() : Optional.of(document(jar, name));
  }

  private static JsonDocument document(JarFile jar, String name) {
    JarEntry entry = jar.getJarEntry(name);
    if (entry == null) {
      throw new IllegalStateException(
          "The file (" + name + ") of the catalogue is missing from this program.");
    }
    try (InputStream in = jar.getInputStream(entry)) {
      return JsonDocument.parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
