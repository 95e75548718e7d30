package counterset.ask;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts an ask into words, numbers and signs. Hyphens within words separate them; control characters
 * are faults.
 */
final class Tokenizer {

  private static final String BREAKS = ",;.:!?()[]\"\u201c\u201d\u2026";
  private static final String DASHES = "-\u2010\u2011\u2012\u2013\u2014\u2212";

  private final String ask;
  private final AskDraft draft;
  private final List<Token> tokens = new ArrayList<>();

  Tokenizer(String ask, AskDraft draft) {
    this.ask = ask;
    this.draft = draft;
  }

  List<Token> tokens() {
    int at = 0;
    while (at < ask.length()) {
      at = next(at);
    }
    return List.copyOf(tokens);
  }

  private int next(int at) {
    char c = ask.charAt(at);
    if (c == '\t'
        || c == ' '
        || Character.isSpaceChar(c) && Character.getType(c) == Character.SPACE_SEPARATOR) {
      return at + 1;
    }
    if (Character.isISOControl(c)) {
      return control(at);
    }
    if (isDigit(at) || DASHES.indexOf(c) >= 0 && isDigit(at + 1) && !isInside(at - 1)) {
      return number(at);
    }
    if (Character.isLetter(c)) {
      return word(at);
    }
    if (DASHES.indexOf(c) >= 0) {
      return dash(at);
    }
    if (BREAKS.indexOf(c) >= 0) {
      return add(Token.Kind.BREAK, at, at + 1, String.valueOf(c));
    }
    return switch (c) {
      case '&' -> add(Token.Kind.WORD, at, at + 1, "and");
      case '+' -> add(Token.Kind.WORD, at, at + 1, "plus");
      case '\u00d7' -> add(Token.Kind.WORD, at, at + 1, "x");
      default -> {
        int end = at + Character.charCount(ask.codePointAt(at));
        yield add(Token.Kind.SYMBOL, at, end, ask.substring(at, end));
      }
    };
  }

  private int control(int at) {
    int end = at;
    while (end < ask.length()
        && ask.charAt(end) != '\t'
        && Character.isISOControl(ask.charAt(end))) {
      end++;
    }
    draft.fault(
        new Words(ask, List.of()).spanOf(at, end),
        "An ask is one line of plain text. Remove the control character, or the end of the line.");
    tokens.add(new Token(Token.Kind.BREAK, "", "", at, end));
    return end;
  }

  /**
   * A decimal number; a comma between digits stays inside, so that it is refused and not taken for
   * two numbers.
   */
  private int number(int at) {
    int end = at + 1;
    boolean comma = false;
    while (isDigit(end) || isDigit(end + 1) && (ask.charAt(end) == '.' || ask.charAt(end) == ',')) {
      comma |= ask.charAt(end) == ',';
      end++;
    }
    String key = isDigit(at) ? ask.substring(at, end) : "-" + ask.substring(at + 1, end);
    boolean odd = comma || key.indexOf('.') != key.lastIndexOf('.');
    return add(odd ? Token.Kind.SYMBOL : Token.Kind.NUMBER, at, end, key);
  }

  private int word(int at) {
    int end = at;
    while (end < ask.length() && Keys.isInside(ask.charAt(end)) && !isDigit(end)) {
      end++;
    }
    return add(Token.Kind.WORD, at, end, Keys.of(ask.substring(at, end)));
  }

  /**
   * A dash joins words, stands between numbers as a sign of its own, and separates phrases
   * otherwise.
   */
  private int dash(int at) {
    if (isDigit(at - 1) && isDigit(at + 1)) {
      return add(Token.Kind.SYMBOL, at, at + 1, "-");
    }
    return isInside(at - 1) && isInside(at + 1) ? at + 1 : add(Token.Kind.BREAK, at, at + 1, "-");
  }

  private int add(Token.Kind kind, int start, int end, String key) {
    tokens.add(new Token(kind, ask.substring(start, end), key, start, end));
    return end;
  }

  private boolean isDigit(int at) {
    return at >= 0 && at < ask.length() && ask.charAt(at) >= '0' && ask.charAt(at) <= '9';
  }

  private boolean isInside(int at) {
    return at >= 0 && at < ask.length() && Keys.isInside(ask.charAt(at));
  }
}
