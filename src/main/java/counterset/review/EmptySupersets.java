package counterset.review;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells of supersets in a row of which the same is to be said in one line. */
final class EmptySupersets {

  private static final Pattern LINE = Pattern.compile("Superset (\\d+): (.*)");

  private EmptySupersets() {}

  /** Lines such as {@code Superset 5: not full} and {@code Superset 6: not full}, put together. */
  static List<String> together(List<String> lines) {
    List<String> told = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher first = LINE.matcher(lines.get(i));
      int last = i;
      while (first.matches()
          && last + 1 < lines.size()
          && goesOn(first, last + 1 - i, lines.get(last + 1))) {
        last++;
      }
      if (last == i) {
        told.add(lines.get(i));
      } else {
        int from = Integer.parseInt(first.group(1));
        told.add("Supersets " + from + " to " + (from + last - i) + ": " + first.group(2));
      }
      i = last;
    }
    return told;
  }

  private static boolean goesOn(Matcher first, int after, String line) {
    int number = Integer.parseInt(first.group(1)) + after;
    return line.equals("Superset " + number + ": " + first.group(2));
  }
}
