package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The tokens of an ask, with what every reader asks of them. Places outside the ask hold nothing.
 */
final class Words {

  private static final Set<String> SEPARATORS = Set.of("and", "plus", "with", "but", "then");
  private static final Set<String> SMALL =
      Set.of("a", "an", "the", "any", "some", "my", "her", "his", "their", "your", "our");

  private final String ask;
  private final List<Token> tokens;

  Words(String ask, List<Token> tokens) {
    this.ask = ask;
    this.tokens = tokens;
  }

  int size() {
    return tokens.size();
  }

  Token at(int i) {
    return i >= 0 && i < tokens.size() ? tokens.get(i) : Token.NONE;
  }

  boolean is(int i, String... keys) {
    String key = at(i).key();
    for (String wanted : keys) {
      if (wanted.equals(key)) {
        return true;
      }
    }
    return false;
  }

  boolean isBreak(int i) {
    return at(i).kind() == Token.Kind.BREAK;
  }

  /** Whether the token only stands between phrases. */
  boolean isSeparator(int i) {
    return isBreak(i)
        || at(i).isWord() && SEPARATORS.contains(at(i).key())
        || is(i, "/") && at(i - 1).isWord() && at(i + 1).isWord();
  }

  /** Whether a word and the next one are joined by a hyphen. */
  boolean isHyphenated(int i) {
    int end = at(i).end();
    return at(i).isWord()
        && at(i + 1).isWord()
        && at(i + 1).start() == end + 1
        && !Character.isSpaceChar(ask.charAt(end))
        && ask.charAt(end) != '\t';
  }

  /** The same words with other tokens. */
  Words with(List<Token> others) {
    return new Words(ask, others);
  }

  /** The next place that holds none of the given keys. */
  int skip(int i, String... keys) {
    int at = i;
    while (is(at, keys)) {
      at++;
    }
    return at;
  }

  /** The next place that holds no article or other small word. */
  int skipSmall(int i) {
    int at = i;
    while (SMALL.contains(at(at).key())) {
      at++;
    }
    return at;
  }

  /** Where a list that has come to a place goes on, if "and" or "or" stands there. */
  Optional<Integer> listGoesOn(int i) {
    int at = isBreak(i) && is(i, ",") && is(i + 1, "and", "or", "nor") ? i + 1 : i;
    return is(at, "and", "or", "nor", "/") ? Optional.of(skipSmall(at + 1)) : Optional.empty();
  }

  List<String> keys(int from, int to) {
    List<String> keys = new ArrayList<>();
    for (int i = from; i < to; i++) {
      keys.add(at(i).key());
    }
    return keys;
  }

  /** The tokens from one place up to another, as written. */
  Span span(int from, int to) {
    return spanOf(at(from).start(), at(to - 1).end());
  }

  Span spanOf(int start, int end) {
    return new Span(Span.escape(ask.substring(start, end)), ask.codePointCount(0, start) + 1);
  }
}
