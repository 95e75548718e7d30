package counterset.json;

import counterset.spelling.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads JSON files; whatever is wrong with one is a single violation with its remedy. */
public final class JsonFiles {

  /** The size above which no file is read: 8 MiB. */
  public static final int LARGEST = 8 * 1024 * 1024;

  private JsonFiles() {}

  /**
   * Reads a file of at most 8 MiB as UTF-8.
   *
   * @throws InvalidInputException with one violation if that fails or the text is not one JSON
   *     value
   */
  public static JsonDocument read(Path path) {
    String file = path.toString();
    return parse(file, bytes(path));
  }

  /**
   * Reads the bytes of a file of at most 8 MiB.
   *
   * @throws InvalidInputException with one violation if that fails
   */
  public static byte[] bytes(Path path) {
    String file = path.toString();
    if (Files.isDirectory(path)) {
      throw InvalidInputException.of(file, "This is a directory; name a file in it.");
    }
    try {
      if (Files.isRegularFile(path) && Files.size(path) > LARGEST) {
        throw tooLarge(file, "The file (" + Files.size(path) + " bytes)");
      }
      try (InputStream in = Files.newInputStream(path)) {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
          throw tooLarge(file, "The file");
        }
        return bytes;
      }
    } catch (NoSuchFileException e) {
      throw InvalidInputException.of(file, "There is no such file." + neighbour(path));
    } catch (AccessDeniedException e) {
      throw InvalidInputException.of(file, "The file may not be read; its permissions forbid it.");
    } catch (IOException e) {
      throw InvalidInputException.of(file, "The file cannot be read.");
    }
  }

  /**
   * Reads the bytes of a file as UTF-8.
   *
   * @param file as the user named it
   * @throws InvalidInputException with one violation if the text is not one JSON value
   */
  public static JsonDocument parse(String file, byte[] bytes) {
    return JsonDocument.parse(file, decode(file, bytes));
  }

  private static InvalidInputException tooLarge(String file, String what) {
    return InvalidInputException.of(
        file, what + " is larger than 8 MiB and was not read; is it the right one?");
  }

  private static String decode(String file, byte[] bytes) {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    if (bytes.length >= 3
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF) {
      buffer.position(3);
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(buffer).toString();
    } catch (CharacterCodingException e) {
      throw InvalidInputException.of(
          file,
          "The file is not UTF-8 text (byte " + (buffer.position() + 1) + "); save it as UTF-8.");
    }
  }

  private static String neighbour(Path path) {
    Path folder = path.toAbsolutePath().getParent();
    if (folder == null || path.getFileName() == null) {
      return "";
    }
    if (!Files.isDirectory(folder)) {
      return " Its folder (" + Shown.of(folder.toString()) + ") does not exist either.";
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<String> names =
          files.limit(1000).map(file -> file.getFileName().toString()).sorted().toList();
      return Nearest.maybe(path.getFileName().toString(), names);
    } catch (IOException e) {
      return "";
    }
  }
}
