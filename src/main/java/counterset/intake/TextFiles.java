package counterset.intake;

import counterset.json.InvalidInputException;
import counterset.json.JsonFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Plain text from files and from what is piped in; whatever is no text is named. */
public final class TextFiles {

  private TextFiles() {}

  /**
   * The bytes of what is piped in.
   *
   * @param file what messages call it
   */
  public static byte[] bytes(InputStream in, String file) {
    try {
      byte[] bytes = in.readNBytes(JsonFiles.LARGEST + 1);
      if (bytes.length > JsonFiles.LARGEST) {
        throw InvalidInputException.of(file, "More than 8 MiB came in and was not read.");
      }
      return bytes;
    } catch (IOException e) {
      throw InvalidInputException.of(file, "What is piped in cannot be read.");
    }
  }

  /** The text of bytes: UTF-8, or UTF-16 with a mark at its beginning. */
  public static String text(String file, byte[] bytes) {
    refuseDocuments(file, bytes);
    int from = 0;
    Charset charset = StandardCharsets.UTF_8;
    if (begins(bytes, 0xFF, 0xFE)) {
      charset = StandardCharsets.UTF_16LE;
      from = 2;
    } else if (begins(bytes, 0xFE, 0xFF)) {
      charset = StandardCharsets.UTF_16BE;
      from = 2;
    } else if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      from = 3;
    }
    ByteBuffer buffer = ByteBuffer.wrap(bytes, from, bytes.length - from);
    String text;
    try {
      text = charset.newDecoder().decode(buffer).toString();
    } catch (CharacterCodingException e) {
      throw InvalidInputException.of(
          file,
          "The file is no plain text in UTF-8 (byte "
              + (buffer.position() + 1)
              + "). Save it as plain text in UTF-8.");
    }
    if (text.indexOf('\0') >= 0) {
      throw InvalidInputException.of(
          file, "The file is no plain text: it holds binary data. Name a text file.");
    }
    if (text.isBlank()) {
      throw InvalidInputException.of(
          file, "The file is empty. Type one exercise a line, such as \"goblet squat / push-up\".");
    }
    return text;
  }

  private static void refuseDocuments(String file, byte[] bytes) {
    String kind = "";
    if (begins(bytes, '%', 'P', 'D', 'F')) {
      kind = "a PDF";
    } else if (begins(bytes, 'P', 'K', 3, 4)) {
      kind = "a packed document, as word processors write them,";
    } else if (begins(bytes, '{', '\\', 'r', 't', 'f')) {
      kind = "an RTF document";
    } else if (begins(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      kind = "an office document";
    } else if (begins(bytes, 0x89, 'P', 'N', 'G') || begins(bytes, 0xFF, 0xD8, 0xFF)) {
      kind = "a picture";
    }
    if (!kind.isEmpty()) {
      throw InvalidInputException.of(
          file, "This is " + kind + " and no plain text. Save its text in a .txt file.");
    }
  }

  private static boolean begins(byte[] bytes, int... with) {
    byte[] wanted = new byte[with.length];
    for (int i = 0; i < with.length; i++) {
      wanted[i] = (byte) with[i];
    }
    return bytes.length >= wanted.length
        && Arrays.equals(bytes, 0, wanted.length, wanted, 0, wanted.length);
  }
}
