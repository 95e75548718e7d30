package counterset.typed;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words that open a part of the session or a superset.
 *
 * @param kind what it opens
 * @param end the place in the line after it
 */
record Heading(Kind kind, int start, int end) {

  enum Kind {
    WARM_UP("the warm-up"),
    COOL_DOWN("the cool-down"),
    MAIN("the main part"),
    SUPERSET("a superset"),
    TITLE("the title"),
    ASK("the ask");

    private final String text;

    Kind(String text) {
      this.text = text;
    }

    String text() {
      return text;
    }
  }

  private static final String MARKS = "^([\\s#*_>]*)";
  private static final String END = "(?=[\\s:.,;()\\[\\]\\-*_/]|$)[*_]*\\s*[:.\\-]?[*_]*";
  private static final Pattern WARM_UP = pattern("(warm(ing)?[ -]?ups?|warming up|mobility)");
  private static final Pattern COOL_DOWN =
      pattern("(cool(ing)?[ -]?downs?|stretch(es|ing)?)(?=\\s*([:(\\d\\-]|$))");
  private static final Pattern MAIN =
      pattern(
          "(main( part| block| set| session| work)?|work ?out|strength( part| block)?|finisher)"
              + "(?=\\s*([:(]|$))");
  private static final Pattern SUPERSET =
      pattern(
          "((super[ -]?set|tri[ -]?set|straight set|block|circuit|pair|station|group|set|ss)"
              + "\\s*#?(\\d{1,2}|[a-h])?)(?=\\s*([:(\\[x\\-,;/]|$|\\d+ ?(rounds?|x|sets?)))");
  private static final Pattern TITLE = Pattern.compile("^(\\s*)(title|session|plan)\\s*:");
  private static final Pattern ASK = Pattern.compile("^(\\s*)(ask|for|client|goal)\\s*:");

  private static Pattern pattern(String words) {
    return Pattern.compile(MARKS + words + END);
  }

  /** The heading that a line begins with. */
  static Optional<Heading> of(Source source) {
    String text = source.text().toLowerCase(Locale.ROOT);
    return match(WARM_UP, text, Kind.WARM_UP)
        .or(() -> match(COOL_DOWN, text, Kind.COOL_DOWN))
        .or(() -> match(TITLE, text, Kind.TITLE))
        .or(() -> match(ASK, text, Kind.ASK))
        .or(() -> match(MAIN, text, Kind.MAIN))
        .or(() -> match(SUPERSET, text, Kind.SUPERSET));
  }

  private static Optional<Heading> match(Pattern pattern, String text, Kind kind) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find()
        ? Optional.of(new Heading(kind, matcher.end(1), matcher.end()))
        : Optional.empty();
  }
}
