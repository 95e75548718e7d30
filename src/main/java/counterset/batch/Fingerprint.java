package counterset.batch;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** SHA-256 over all that goes into a result. */
public final class Fingerprint {

  private Fingerprint() {}

  /** Of some texts, each told from the next. */
  public static String of(List<String> texts) {
    return of(new byte[0], texts);
  }

  /** Of the bytes of a file and some texts, each told from the next. */
  public static String of(byte[] file, List<String> texts) {
    MessageDigest digest = digest();
    add(digest, file);
    texts.forEach(text -> add(digest, text.getBytes(StandardCharsets.UTF_8)));
    return HexFormat.of().formatHex(digest.digest());
  }

  private static void add(MessageDigest digest, byte[] bytes) {
    digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).flip());
    digest.update(bytes);
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java machine has SHA-256.", e);
    }
  }
}
