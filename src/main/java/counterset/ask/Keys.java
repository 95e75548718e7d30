package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The form in which words are compared: lower case, no apostrophes, no plural ending. */
public final class Keys {

  private Keys() {}

  /** The key of one word. */
  public static String of(String word) {
    String key = word.toLowerCase(Locale.ROOT);
    if (key.indexOf('\'') >= 0 || key.indexOf('\u2019') >= 0) {
      key = key.replace("'", "").replace("\u2019", "");
    }
    int length = key.length();
    if (length > 4 && key.endsWith("ies")) {
      return key.substring(0, length - 3) + "y";
    }
    if (length > 4
        && (key.endsWith("sses")
            || key.endsWith("ches")
            || key.endsWith("shes")
            || key.endsWith("xes"))) {
      return key.substring(0, length - 2);
    }
    boolean plural =
        length > 2
            && key.endsWith("s")
            && !key.endsWith("ss")
            && !key.endsWith("us")
            && !key.endsWith("is");
    return plural ? key.substring(0, length - 1) : key;
  }

  /** The keys of a name or id, cut where the tokenizer would cut it. */
  public static List<String> ofName(String name) {
    List<String> keys = new ArrayList<>();
    int from = -1;
    for (int i = 0; i <= name.length(); i++) {
      boolean inside = i < name.length() && isInside(name.charAt(i));
      if (inside && from < 0) {
        from = i;
      } else if (!inside && from >= 0) {
        keys.add(of(name.substring(from, i)));
        from = -1;
      }
    }
    return keys;
  }

  static boolean isInside(char c) {
    return Character.isLetterOrDigit(c) || c == '\'' || c == '\u2019';
  }
}
