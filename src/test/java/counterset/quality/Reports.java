package counterset.quality;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Plain texts in {@code quality} in the folder of the packaged program. */
final class Reports {

  private Reports() {}

  /** Writes a report and prints it. */
  static void tell(String name, String text) throws IOException {
    write(name, text);
    System.out.println(text);
  }

  static void write(String name, String text) throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "quality"));
    Files.writeString(folder.resolve(name), text);
  }
}
