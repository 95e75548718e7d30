package counterset.catalogue;

import counterset.json.JsonDocument;
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
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** The catalogue on the class path, be it a directory of classes or a jar. */
final class EmbeddedFiles {

  private static final String ROOT = "catalogue/";

  private EmbeddedFiles() {}

  static CatalogueFiles read() {
    return read(EmbeddedFiles.class.getClassLoader());
  }

  static CatalogueFiles read(ClassLoader loader) {
    URL anchor = loader.getResource(ROOT + CatalogueFiles.MUSCLES);
    if (anchor == null) {
      throw new IllegalStateException("The catalogue is missing from this program.");
    }
    try {
      URLConnection connection = anchor.openConnection();
      if (connection instanceof JarURLConnection jar) {
        jar.setUseCaches(false);
        try (JarFile file = jar.getJarFile()) {
          return fromJar(file);
        }
      }
      return CatalogueFiles.in(Path.of(anchor.toURI()).getParent(), true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static CatalogueFiles fromJar(JarFile jar) {
    List<JsonDocument> exercises =
        jar.stream()
            .map(JarEntry::getName)
            .filter(
                name ->
                    name.startsWith(ROOT + CatalogueFiles.EXERCISES + "/")
                        && name.endsWith(".json"))
            .sorted()
            .map(name -> document(jar, name))
            .toList();
    return new CatalogueFiles(
        Optional.of(document(jar, ROOT + CatalogueFiles.MUSCLES)),
        Optional.of(document(jar, ROOT + CatalogueFiles.EQUIPMENT)),
        Optional.of(document(jar, ROOT + CatalogueFiles.LIMITATIONS)),
        Optional.empty(),
        exercises,
        List.of());
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
