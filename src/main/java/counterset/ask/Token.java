package counterset.ask;

/**
 * A token of an ask.
 *
 * @param text as written
 * @param key the text as the vocabulary knows it: lower case, without a plural ending
 * @param start the offset of its first character
 * @param end the offset after its last character
 */
public record Token(Kind kind, String text, String key, int start, int end) {

  public enum Kind {
    WORD,
    NUMBER,
    BREAK,
    SYMBOL,
    END
  }

  static final Token NONE = new Token(Kind.END, "", "", 0, 0);

  public boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  public boolean isWord() {
    return kind == Kind.WORD;
  }

  /** Whether the word is written with a plural ending. */
  public boolean isPlural() {
    return isWord() && key.length() < text.length();
  }
}
