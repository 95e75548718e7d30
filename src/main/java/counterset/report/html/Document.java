package counterset.report.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A whole page: one file with its style and its script inside, and a policy by which a browser
 * loads nothing and runs nothing else (Content Security Policy Level 3, W3C).
 *
 * @param title plain text
 * @param style CSS; empty for none
 * @param script JavaScript; empty for none
 * @param body markup
 */
record Document(String title, String style, String script, String body) {

  Document {
    if (style.contains("</") || script.contains("</")) {
      throw new IllegalArgumentException("A style or a script would end too early (\"</\").");
    }
  }

  /** The bytes of the file as text. */
  String text() {
    return Template.fill("document", this);
  }

  /** Styles and scripts are named by their hashes, so that none that is slipped in counts. */
  String policy() {
    return "default-src 'none'; style-src "
        + source(style)
        + "; script-src "
        + source(script)
        + "; base-uri 'none'; form-action 'none'";
  }

  private static String source(String text) {
    if (text.isEmpty()) {
      return "'none'";
    }
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
