package counterset.score;

/**
 * How much more or less of what a constraint counts one plan has than another.
 *
 * @param amount units, at least 0
 * @param better whether the change is for the better
 */
public record Total(int amount, boolean better) {

  String fewer() {
    return better ? "fewer" : "more";
  }

  String less() {
    return better ? "less" : "more";
  }
}
