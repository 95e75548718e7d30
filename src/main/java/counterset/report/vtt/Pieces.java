package counterset.report.vtt;

import java.util.ArrayList;
import java.util.List;

/** Cuts a sentence into captions of some short lines, between words. */
final class Pieces {

  private Pieces() {}

  /**
   * The pieces in order; a word that is longer than a line has a line to itself.
   *
   * @param width characters a line
   * @param lines a piece
   */
  static List<String> of(String sentence, int width, int lines) {
    List<String> pieces = new ArrayList<>();
    List<String> all = lines(sentence, width);
    for (int i = 0; i < all.size(); i += lines) {
      pieces.add(String.join("\n", all.subList(i, Math.min(all.size(), i + lines))));
    }
    return pieces;
  }

  private static List<String> lines(String sentence, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : sentence.strip().split("\\s+")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
