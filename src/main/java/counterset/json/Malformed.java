package counterset.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Plain words for text that is not JSON. */
final class Malformed {

  private static final Pattern CHARACTER =
      Pattern.compile("^Unexpected character \\('(.)'", Pattern.DOTALL);
  private static final Pattern QUOTED = Pattern.compile("'([^']{0,60})");

  private Malformed() {}

  static String trailing(int column) {
    return "There is more text after the JSON value (column "
        + column
        + "); a file holds one value, remove the rest.";
  }

  static String explain(JsonProcessingException fault, int column) {
    String message = fault.getOriginalMessage();
    if (message.startsWith("Duplicate field")) {
      return "The property ("
          + quoted(message)
          + ") is written twice in one object (column "
          + column
          + "); keep one of them.";
    }
    if (message.contains("nesting depth")) {
      return "The value is nested deeper than "
          + Json.DEEPEST
          + " levels (column "
          + column
          + "); no file needs that.";
    }
    return "This is not valid JSON at column " + column + ": " + reason(message) + ".";
  }

  private static String reason(String message) {
    if (message.contains("end-of-input")) {
      return "the text ends too early, a closing bracket or quote is missing";
    }
    if (message.startsWith("Unexpected close marker")) {
      return "a bracket closes nothing, or not the kind of bracket that was opened";
    }
    if (message.startsWith("Unrecognized token") || message.startsWith("Non-standard token")) {
      return "the word ("
          + quoted(message)
          + ") is neither text in double quotes, a number, true, false nor null";
    }
    if (message.startsWith("Illegal character")) {
      return "there is a control character that no text has; maybe this is no text file";
    }
    if (message.startsWith("Illegal unquoted character")) {
      return "text must not run over a line break or hold control characters; write \\n for a line break";
    }
    if (message.contains("eading zeroes")) {
      return "a number must not begin with a zero";
    }
    Matcher matcher = CHARACTER.matcher(message);
    return matcher.find() ? character(matcher.group(1), message) : firstLine(message);
  }

  private static String character(String character, String message) {
    String shown = "(" + Shown.of(character) + ")";
    if (message.contains("expecting comma")) {
      return "a comma or a closing bracket is missing before " + shown;
    }
    if (message.contains("expecting a colon")) {
      return "a colon is missing before " + shown;
    }
    return switch (character) {
      case "}", "]" -> "there is a comma too many, or a value is missing, before " + shown;
      case "'" -> "names and text stand in double quotes, not in single ones";
      case "/", "#" -> "JSON has no comments, remove what begins with " + shown;
      default ->
          "the character " + shown + " cannot stand here; names and text stand in double quotes";
    };
  }

  private static String quoted(String message) {
    Matcher matcher = QUOTED.matcher(message);
    return matcher.find() ? Shown.of(matcher.group(1)) : "";
  }

  private static String firstLine(String message) {
    return Shown.of(message.lines().findFirst().orElse("it cannot be read"));
  }
}
