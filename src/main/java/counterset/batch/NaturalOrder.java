package counterset.batch;

import java.io.Serializable;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The order in which people list files: numbers by their value, letters without their case. */
public final class NaturalOrder implements Comparator<String>, Serializable {

  private static final long serialVersionUID = 1L;

  private static final Pattern PART = Pattern.compile("[0-9]+|[^0-9]+");

  @Override
  public int compare(String one, String two) {
    Matcher a = PART.matcher(one.toLowerCase(Locale.ROOT));
    Matcher b = PART.matcher(two.toLowerCase(Locale.ROOT));
    while (true) {
      boolean more = a.find();
      if (!b.find()) {
        return more ? 1 : one.compareTo(two);
      }
      if (!more) {
        return -1;
      }
      int order = part(a.group(), b.group());
      if (order != 0) {
        return order;
      }
    }
  }

  private static int part(String one, String two) {
    if (!isNumber(one) || !isNumber(two)) {
      return one.compareTo(two);
    }
    String a = one.replaceFirst("^0+(?=.)", "");
    String b = two.replaceFirst("^0+(?=.)", "");
    return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
  }

  private static boolean isNumber(String part) {
    return part.charAt(0) >= '0' && part.charAt(0) <= '9';
  }
}
