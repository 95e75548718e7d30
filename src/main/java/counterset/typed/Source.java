package counterset.typed;

/**
 * One line of the text, cleaned: plain spaces, hyphens, slashes and apostrophes, decimal points.
 *
 * @param number from 1
 * @param raw as it was typed
 * @param text cleaned, its remark cut off
 * @param places for each character of the text and its end, where it stands in the raw line
 * @param remark the remark after {@code #}, empty if there is none
 */
record Source(int number, String raw, String text, int[] places, String remark) {

  /** The column of a place in the text, in characters from 1. */
  int column(int place) {
    return raw.codePointCount(0, places[Math.min(place, text.length())]) + 1;
  }

  /** What was typed from one place of the text to another. */
  String typed(int start, int end) {
    int from = places[start];
    int to = end > start ? places[end - 1] + width(places[end - 1]) : from;
    return Clean.printable(raw.substring(from, to).strip());
  }

  private int width(int place) {
    return Character.charCount(raw.codePointAt(place));
  }

  boolean isBlank() {
    return text.isBlank();
  }

  /** Where the first character that is no space stands. */
  int first() {
    int at = 0;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at;
  }

  /** The same line from a place on, with the places before it blank. */
  Source from(int place) {
    return with(" ".repeat(place) + text.substring(place));
  }

  /** The same line with other characters at the same places. */
  Source with(String other) {
    return new Source(number, raw, other, places, remark);
  }
}
